package org.taperwright.catalogue.ui.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.InstrumentChecks;
import org.taperwright.workbench.api.Desk;

/** The instrument whose form is open: turns each field entered into one named edit, or says why it cannot be. */
final class EditedInstrument {
    private final Desk desk;
    private final Consumer<List<Fault>> refused;
    private Optional<ThingId> id = Optional.empty();

    /**
     * @param refused receives why an entry was not taken
     */
    EditedInstrument(Desk desk, Consumer<List<Fault>> refused) {
        this.desk = desk;
        this.refused = refused;
    }

    void open(Optional<ThingId> opened) {
        id = opened;
    }

    /** The instrument as it stands. */
    Optional<Instrument> now() {
        return id.flatMap(each -> desk.snapshot().thing(each, Instrument.class));
    }

    /**
     * Makes an edit.
     *
     * @param field in the words of the form, such as "Lot"
     * @param value the value as people read it; empty when it was cleared
     */
    void change(String field, String value, UnaryOperator<Instrument> change) {
        now().ifPresent(before -> {
            Instrument after = change.apply(before);
            List<Fault> faults = InstrumentChecks.check(after, LocalDate.now()).stream()
                    .filter(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                    .toList();
            if (faults.isEmpty() && !after.equals(before)) {
                String what = value.isBlank() ? "cleared" : "to " + shortened(value);
                faults = desk.tryEdit(
                        field + " of " + before.name() + " " + what, List.of(new Change.Put(id.orElseThrow(), after)));
            }
            if (!faults.isEmpty()) {
                refused.accept(faults);
            }
        });
    }

    private static String shortened(String value) {
        String line = value.strip().replaceAll("\\s+", " ");
        return line.length() <= 40 ? line : line.substring(0, 39) + "…";
    }
}
