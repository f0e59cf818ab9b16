package org.taperwright.workbench.ui;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

/**
 * Which look each design has, the same in every window because it follows from the library alone: designs take places
 * in the order in which saved comparisons name them, each the first that no companion in any of its comparisons has;
 * designs in no comparison take one by their identifier.
 */
public final class SeriesLooks {
    private final Map<ThingId, SeriesLook> looks;

    private SeriesLooks(Map<ThingId, SeriesLook> looks) {
        this.looks = looks;
    }

    /** The looks of a library's designs. */
    public static SeriesLooks of(Snapshot snapshot) {
        List<List<ThingId>> groups = snapshot.ofKind(ThingKind.COMPARISON).stream()
                .sorted(java.util.Comparator.comparing(entry -> entry.id()))
                .map(entry -> ((SavedComparison) entry.thing()).designs())
                .toList();
        Map<ThingId, SeriesLook> looks = new HashMap<>();
        for (List<ThingId> group : groups) {
            for (ThingId design : group) {
                looks.computeIfAbsent(design, id -> free(id, groups, Map.copyOf(looks)));
            }
        }
        return new SeriesLooks(looks);
    }

    /** A design's look. */
    public SeriesLook of(ThingId design) {
        SeriesLook look = looks.get(design);
        return look == null ? new SeriesLook(Math.floorMod(design.value().hashCode(), SeriesLook.DISTINCT)) : look;
    }

    private static SeriesLook free(ThingId design, List<List<ThingId>> groups, Map<ThingId, SeriesLook> given) {
        Set<Integer> taken = new HashSet<>();
        for (List<ThingId> group : groups) {
            if (group.contains(design)) {
                group.stream()
                        .filter(given::containsKey)
                        .forEach(id -> taken.add(given.get(id).place()));
            }
        }
        int place = 0;
        while (taken.contains(place)) {
            place++;
        }
        return new SeriesLook(place);
    }
}
