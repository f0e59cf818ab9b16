package org.taperwright.catalogue.ui.entry;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.ManyEdit;
import org.taperwright.workbench.api.EditWork;
import org.taperwright.workbench.api.NamedEdit;

/** The same change of many instruments, worked out off the event thread, and what to say of it afterwards. */
final class ManyChange implements EditWork {
    private static final int BETWEEN_CHECKS = 500;
    private static final int MOST_TOLD = 50;

    private final ManyEdit edit;
    private final List<ThingId> ids;
    private final LocalDate today;
    private volatile int changed;
    private volatile String words = "";

    ManyChange(ManyEdit edit, List<ThingId> ids, LocalDate today) {
        this.edit = edit;
        this.ids = List.copyOf(ids);
        this.today = today;
    }

    @Override
    public NamedEdit of(Snapshot library, Progress progress) {
        List<Change> changes = new ArrayList<>();
        Map<ThingId, List<Fault>> faults = new LinkedHashMap<>();
        for (int from = 0; from < ids.size(); from += BETWEEN_CHECKS) {
            progress.check();
            progress.at((double) from / ids.size(), "instruments");
            Map<ThingId, Instrument> some = new LinkedHashMap<>();
            for (ThingId id : ids.subList(from, Math.min(ids.size(), from + BETWEEN_CHECKS))) {
                library.thing(id, Instrument.class).ifPresent(found -> some.put(id, found));
            }
            ManyEdit.Outcome made = edit.in(some, today);
            made.changed().forEach((id, after) -> changes.add(new Change.Put(id, after)));
            faults.putAll(made.faults());
        }
        changed = changes.size();
        words = words(changes.size(), faults, library);
        return new NamedEdit(edit.name(changes.size()), changes);
    }

    /** How many can be changed, once it has been worked out. */
    int changed() {
        return changed;
    }

    /** How many were changed, and what became of each row that could not be, once it has been worked out. */
    String words() {
        return words;
    }

    private static String words(int changed, Map<ThingId, List<Fault>> faults, Snapshot library) {
        long left = faults.values().stream()
                .filter(each -> each.stream().anyMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE))
                .count();
        String head = String.format(Locale.UK, "%,d changed", changed)
                + (left == 0 ? "." : String.format(Locale.UK, ", %,d left as they were:", left));
        String rows = faults.entrySet().stream()
                .limit(MOST_TOLD)
                .map(each -> row(each.getKey(), each.getValue(), library))
                .collect(Collectors.joining("\n"));
        String more = faults.size() > MOST_TOLD
                ? String.format(Locale.UK, "\n… and %,d more", faults.size() - MOST_TOLD)
                : "";
        return rows.isEmpty() ? head : head + "\n" + rows + more;
    }

    private static String row(ThingId id, List<Fault> faults, Snapshot library) {
        String name = library.entry(id).map(Entry::name).orElse(id.value());
        return name + ": "
                + faults.stream()
                        .map(fault -> fault.what() + "; " + fault.expected())
                        .collect(Collectors.joining(", "));
    }
}
