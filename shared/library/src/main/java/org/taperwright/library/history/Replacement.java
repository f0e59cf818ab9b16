package org.taperwright.library.history;

import java.util.Optional;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

/** What an edit did to one thing: the record before and after; none before adds it, none after takes it out. */
record Replacement(ThingId id, Optional<Record> before, Optional<Record> after) {
    Replacement reversed() {
        return new Replacement(id, after, before);
    }

    boolean changesNothing() {
        return before.equals(after);
    }

    ThingKind kind() {
        return ThingKind.of(after.or(() -> before).orElseThrow());
    }
}
