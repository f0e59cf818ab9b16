package org.taperwright.library.history;

import java.time.Instant;
import java.util.Set;
import org.taperwright.mechanics.design.ThingId;

/** An edit on its way to the disk. */
record PendingEdit(MadeEdit edit, Instant at) {
    PendingEdit without(Set<ThingId> ids) {
        return new PendingEdit(edit.without(ids), at);
    }

    boolean empty() {
        return edit.replacements().isEmpty();
    }
}
