package org.taperwright.library.history;

import java.time.Instant;
import java.util.Set;
import org.taperwright.library.store.EditToken;
import org.taperwright.mechanics.design.ThingId;

/** An edit on its way to the disk. */
record PendingEdit(EditToken token, MadeEdit edit, Instant at) {
    PendingEdit(MadeEdit edit, Instant at) {
        this(EditToken.fresh(), edit, at);
    }

    PendingEdit without(Set<ThingId> ids) {
        return new PendingEdit(token, edit.without(ids), at);
    }

    boolean empty() {
        return edit.replacements().isEmpty();
    }
}
