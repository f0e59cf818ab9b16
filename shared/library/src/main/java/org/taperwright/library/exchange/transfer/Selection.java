package org.taperwright.library.exchange.transfer;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Reference;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;

/**
 * Things of a library with everything they refer to, directly or through others.
 *
 * @param bundle the things: by kind, then by identifier, so that what is referred to mostly comes first
 * @param absent what they refer to that the library has not
 */
public record Selection(LibraryBundle bundle, Set<ThingId> absent) {
    public Selection {
        absent = Set.copyOf(absent);
    }

    /** The things of these identifiers, and what they refer to. */
    public static Selection of(Snapshot library, Collection<ThingId> ids) {
        Set<ThingId> seen = new LinkedHashSet<>();
        Set<ThingId> absent = new TreeSet<>();
        Deque<ThingId> waiting = new ArrayDeque<>(ids);
        while (!waiting.isEmpty()) {
            ThingId id = waiting.poll();
            if (!seen.contains(id) && !absent.contains(id)) {
                Optional<Entry> entry = library.entry(id);
                (entry.isPresent() ? seen : absent).add(id);
                entry.ifPresent(there -> Reference.of(there.thing()).forEach(each -> waiting.add(each.to())));
            }
        }
        List<LibraryBundle.Item> items = seen.stream()
                .flatMap(id -> library.entry(id).stream())
                .sorted(Comparator.comparing(Entry::kind).thenComparing(Entry::id))
                .map(entry -> new LibraryBundle.Item(entry.id(), entry.thing()))
                .toList();
        return new Selection(new LibraryBundle(items), absent);
    }

    /** The whole library. */
    public static Selection all(Snapshot library) {
        return of(library, library.entries().keySet());
    }
}
