package org.taperwright.library.exchange;

import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

/**
 * A thing as read from a file.
 *
 * @param id its identifier
 * @param thing one of the records of {@link ThingKind}
 * @param origin where it stood
 */
public record ReadThing(ThingId id, Record thing, Origin origin) {
    /** The thing's kind. */
    public ThingKind kind() {
        return ThingKind.of(thing);
    }
}
