package org.taperwright.library.store;

import java.time.Instant;
import java.util.Comparator;
import org.taperwright.mechanics.design.ThingId;

/**
 * A thing as it stands in the library.
 *
 * @param id its identifier
 * @param thing the thing: one of the records of {@link ThingKind}
 * @param revision number of the revision that made it so, rising over the whole library
 * @param at when
 * @param edit the name of the edit that made it so
 */
public record Entry(ThingId id, Record thing, long revision, Instant at, String edit) {
    /** The order of names, whatever their case; of two with one name the lesser identifier comes first. */
    public static final Comparator<Entry> BY_NAME =
            Comparator.comparing(Entry::name, String.CASE_INSENSITIVE_ORDER).thenComparing(Entry::id);

    /** The thing's kind. */
    public ThingKind kind() {
        return ThingKind.of(thing);
    }

    /** What people call it. */
    public String name() {
        return Names.of(thing);
    }
}
