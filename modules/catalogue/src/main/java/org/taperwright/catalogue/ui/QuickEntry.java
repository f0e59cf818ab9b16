package org.taperwright.catalogue.ui;

import java.util.List;
import java.util.Locale;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.SizeSeries;

/**
 * New instruments from little: sizes, taper, type and length fill the rest. The design is assumed from the library's
 * instrument of that type that is nearest in size, or from the standard's plain design when there is none.
 *
 * @param sizes sizes, hundredths of a millimetre at the tip
 * @param taper taper over the whole working part, mm/mm
 * @param type the trade's type
 * @param lengthMm length from tip to handle, mm
 */
record QuickEntry(List<Integer> sizes, double taper, String type, double lengthMm) {
    QuickEntry {
        sizes = List.copyOf(sizes);
    }

    /** A named edit. */
    record Edit(String name, List<Change> changes) {}

    /** Whether nothing that was entered is impossible. */
    boolean possible() {
        return series(sizes).faults().stream().noneMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE);
    }

    /** The edit that adds the instruments. */
    Edit edit(List<InstrumentRow> known) {
        List<Instrument> made = series(sizes).instruments(instruments(known));
        List<Change> changes = made.stream()
                .<Change>map(instrument -> new Change.Put(ThingId.fresh(), instrument))
                .toList();
        String name = made.size() == 1
                ? "Add " + made.get(0).name()
                : String.format(
                        Locale.ROOT,
                        "Add %d instruments, %s %02d to %02d",
                        sizes.size(),
                        type,
                        sizes.get(0),
                        sizes.get(sizes.size() - 1));
        return new Edit(name, changes);
    }

    /** The instrument of a size. */
    Instrument instrument(int size, List<InstrumentRow> known) {
        return series(List.of(size)).instruments(instruments(known)).get(0);
    }

    private SizeSeries series(List<Integer> of) {
        return new SizeSeries(type, of, List.of(taper), List.of(lengthMm));
    }

    private static List<Instrument> instruments(List<InstrumentRow> rows) {
        return rows.stream().map(InstrumentRow::instrument).toList();
    }

    /** How many instruments of the library are the same by designation, type and length. */
    long alike(List<InstrumentRow> known) {
        return known.stream()
                .filter(row -> row.instrument().type().equals(type)
                        && sizes.contains(row.designation().size())
                        && Math.abs(row.designation().taper() - taper) < 1e-9
                        && Math.abs(row.instrument().design().lengthMm() - lengthMm) < 1e-9)
                .count();
    }
}
