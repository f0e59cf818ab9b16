package org.taperwright.library.history;

import org.taperwright.mechanics.design.ThingId;

/** One thing's part in an edit. */
public sealed interface Change {
    /** The thing concerned. */
    ThingId id();

    /** Adds a thing or puts a new version in the place of the old. */
    record Put(ThingId id, Record thing) implements Change {}

    /** Takes a thing out of the library; its past stays. */
    record Remove(ThingId id) implements Change {}
}
