package org.taperwright.library.history;

import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.taperwright.library.store.Content;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;

/** The library after a change. Each thing's change raises the revision by one, as in the store. */
final class NextSnapshot {
    private final Snapshot before;
    private final Map<ThingId, Entry> put = new LinkedHashMap<>();
    private final Set<ThingId> takenOut = new LinkedHashSet<>();
    private long revision;

    private NextSnapshot(Snapshot before) {
        this.before = before;
        this.revision = before.revision();
    }

    /** After an edit of this program. */
    static Snapshot of(Snapshot before, MadeEdit edit, Instant at) {
        NextSnapshot next = new NextSnapshot(before);
        edit.replacements().forEach(each -> next.put(each.id(), each.after(), at, edit.name()));
        return next.made();
    }

    /** After others' changes. */
    static Snapshot of(Snapshot before, Collection<Revision> theirs) {
        NextSnapshot next = new NextSnapshot(before);
        theirs.forEach(each -> next.put(
                each.id(),
                each.content() instanceof Content.Present present ? Optional.of(present.thing()) : Optional.empty(),
                each.at(),
                each.edit()));
        return next.made();
    }

    private void put(ThingId id, Optional<Record> thing, Instant at, String edit) {
        revision++;
        if (thing.isPresent()) {
            put.put(id, new Entry(id, thing.get(), revision, at, edit));
        } else {
            takenOut.add(id);
        }
    }

    private Snapshot made() {
        return before.with(revision, put.values(), takenOut);
    }
}
