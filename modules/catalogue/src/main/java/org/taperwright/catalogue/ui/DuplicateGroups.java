package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Duplicates;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Likeness;

/**
 * The groups of a catalogue's instruments that are alike, and the rows of the list of them.
 *
 * @param found the groups
 * @param rows one for each of the first groups: what they are alike in, how many, the name of the first
 */
record DuplicateGroups(List<Likeness> found, List<List<String>> rows) {
    /** So many rows are made; who has more to look at merges some first. */
    static final int MOST_SHOWN = 1000;

    static final DuplicateGroups NONE = new DuplicateGroups(List.of(), List.of());

    /** Looks for them, but for those that a person left as they are. */
    static DuplicateGroups in(Snapshot library, Set<Likeness> left, Progress progress) {
        Map<ThingId, Instrument> catalogue = new LinkedHashMap<>();
        for (Entry entry : library.ofKind(ThingKind.INSTRUMENT)) {
            catalogue.put(entry.id(), (Instrument) entry.thing());
        }
        progress.check();
        Duplicates duplicates = Duplicates.in(catalogue);
        progress.check();
        List<Likeness> found =
                duplicates.all().stream().filter(group -> !left.contains(group)).toList();
        List<List<String>> rows = new ArrayList<>();
        for (Likeness each : found.subList(0, Math.min(MOST_SHOWN, found.size()))) {
            Instrument first = catalogue.get(each.entries().get(0));
            rows.add(
                    List.of(each.kind().words(), Integer.toString(each.entries().size()), first.name()));
        }
        return new DuplicateGroups(found, List.copyOf(rows));
    }
}
