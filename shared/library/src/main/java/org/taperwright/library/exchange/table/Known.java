package org.taperwright.library.exchange.table;

import java.util.Optional;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;

/** What the library already holds: a row that names such a thing changes it, and keeps what the table does not say. */
public interface Known {
    /** A library that holds nothing. */
    Known NOTHING = id -> Optional.empty();

    /** The thing of an identifier. */
    Optional<Record> thing(ThingId id);

    /** What a snapshot holds. */
    static Known of(Snapshot snapshot) {
        return id -> snapshot.entry(id).map(Entry::thing);
    }
}
