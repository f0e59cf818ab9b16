package org.taperwright.library.history;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.taperwright.library.store.Contents;
import org.taperwright.mechanics.design.ThingId;

/** The revision at which this program knows each thing to stand. Not thread-safe. */
final class Heads {
    private final Map<ThingId, Long> heads;
    /** Our own revisions after the last look, which are no news. */
    private final Set<Long> own = new HashSet<>();

    private long seen;

    Heads(Contents contents) {
        this.heads = new HashMap<>(contents.heads());
        this.seen = contents.snapshot().revision();
    }

    /** 0 for a thing that never was. */
    long of(ThingId id) {
        return heads.getOrDefault(id, 0L);
    }

    void known(ThingId id, long revision) {
        heads.put(id, revision);
    }

    void stored(ThingId id, long revision) {
        heads.put(id, revision);
        own.add(revision);
    }

    /** The last revision looked at. */
    long seen() {
        return seen;
    }

    /** Looks at a revision; whether others made it. */
    boolean look(long revision) {
        seen = Math.max(seen, revision);
        return !own.remove(revision);
    }
}
