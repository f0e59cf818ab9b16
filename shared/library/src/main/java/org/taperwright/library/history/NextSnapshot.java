package org.taperwright.library.history;

import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.store.Content;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;

/** The library after a change. Each thing's change raises the revision by one, as in the store. */
final class NextSnapshot {
    private final Map<ThingId, Entry> entries;
    private long revision;

    private NextSnapshot(Snapshot before) {
        this.entries = new HashMap<>(before.entries());
        this.revision = before.revision();
    }

    /** After an edit of this program. */
    static Snapshot of(Snapshot before, MadeEdit edit, Instant at) {
        NextSnapshot next = new NextSnapshot(before);
        edit.replacements().forEach(each -> next.put(each.id(), each.after(), at, edit.name()));
        return new Snapshot(next.revision, next.entries);
    }

    /** After others' changes. */
    static Snapshot of(Snapshot before, Collection<Revision> theirs) {
        NextSnapshot next = new NextSnapshot(before);
        theirs.forEach(each -> next.put(
                each.id(),
                each.content() instanceof Content.Present present ? Optional.of(present.thing()) : Optional.empty(),
                each.at(),
                each.edit()));
        return new Snapshot(next.revision, next.entries);
    }

    private void put(ThingId id, Optional<Record> thing, Instant at, String edit) {
        revision++;
        if (thing.isPresent()) {
            entries.put(id, new Entry(id, thing.get(), revision, at, edit));
        } else {
            entries.remove(id);
        }
    }
}
