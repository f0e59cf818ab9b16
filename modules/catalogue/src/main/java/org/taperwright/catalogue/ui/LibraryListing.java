package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Work;

/**
 * Lists a library's things by kind and name off the event thread. Kinds in which nothing changed since the listing before
 * are taken over.
 *
 * @param before what is shown so far
 * @param snapshot the library
 * @param words what is searched for
 */
record LibraryListing(LibraryContents before, Snapshot snapshot, SearchWords words) implements Work<LibraryContents> {
    private static final int BETWEEN_CHECKS = 2000;

    @Override
    public LibraryContents run(Progress progress) {
        Set<ThingKind> stale = words.equals(before.words()) ? stale(progress) : EnumSet.allOf(ThingKind.class);
        Map<ThingKind, List<Entry>> byKind = new EnumMap<>(before.byKind());
        stale.forEach(kind -> byKind.put(kind, new ArrayList<>()));
        int seen = 0;
        for (Entry entry : snapshot.entries().values()) {
            check(++seen, progress);
            if (stale.contains(entry.kind()) && (words.none() || words.in(SearchWords.fold(entry.name())))) {
                byKind.get(entry.kind()).add(entry);
            }
        }
        Map<ThingId, Integer> places = new HashMap<>();
        for (ThingKind kind : ThingKind.values()) {
            List<Entry> listed = stale.contains(kind) ? byName(byKind.get(kind)) : byKind.get(kind);
            progress.check();
            byKind.put(kind, listed);
            for (int i = 0; i < listed.size(); i++) {
                places.put(listed.get(i).id(), i);
            }
        }
        return new LibraryContents(snapshot, words, byKind, places, !stale.isEmpty());
    }

    /** The kinds whose things are not the ones shown. */
    private Set<ThingKind> stale(Progress progress) {
        Set<ThingKind> stale = EnumSet.noneOf(ThingKind.class);
        int seen = 0;
        for (Entry entry : snapshot.entries().values()) {
            check(++seen, progress);
            if (before.snapshot().entries().get(entry.id()) != entry) {
                stale.add(entry.kind());
            }
        }
        for (Entry entry : before.snapshot().entries().values()) {
            check(++seen, progress);
            if (!snapshot.entries().containsKey(entry.id())) {
                stale.add(entry.kind());
            }
        }
        return stale;
    }

    private static void check(int seen, Progress progress) {
        if (seen % BETWEEN_CHECKS == 0) {
            progress.check();
        }
    }

    /** Sorts by keys made once for each entry. */
    private static List<Entry> byName(List<Entry> entries) {
        record Keyed(String key, Entry entry) {}
        return entries.stream()
                .map(entry -> new Keyed(NaturalOrder.key(entry.name()), entry))
                .sorted(Comparator.comparing(Keyed::key)
                        .thenComparing(keyed -> keyed.entry().id()))
                .map(Keyed::entry)
                .toList();
    }
}
