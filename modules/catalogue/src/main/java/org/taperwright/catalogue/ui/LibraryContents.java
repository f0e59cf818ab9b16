package org.taperwright.catalogue.ui;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

/**
 * What the library's tree shows: the things of each kind by name that a search lets through.
 *
 * @param snapshot the library
 * @param words what was searched for
 * @param byKind the things of each kind, by name
 * @param places where a thing stands among those of its kind; absent for what is not shown
 * @param changed whether anything differs from the contents before
 */
record LibraryContents(
        Snapshot snapshot,
        SearchWords words,
        Map<ThingKind, List<Entry>> byKind,
        Map<ThingId, Integer> places,
        boolean changed) {
    /** Before anything is listed. */
    static LibraryContents nothing() {
        Map<ThingKind, List<Entry>> none = new EnumMap<>(ThingKind.class);
        for (ThingKind kind : ThingKind.values()) {
            none.put(kind, List.of());
        }
        return new LibraryContents(new Snapshot(0, Map.of()), SearchWords.of(""), none, Map.of(), true);
    }

    /** The things of a kind. */
    List<Entry> of(ThingKind kind) {
        return byKind.get(kind);
    }

    /** Where a thing stands among those of its kind. */
    Optional<Integer> place(ThingId id) {
        return Optional.ofNullable(places.get(id));
    }
}
