package org.taperwright.library.store;

import java.util.List;

/** What came of storing an edit. */
public sealed interface AppendResult {
    /** Stored and safe on the disk: the revision of each draft, in their order. */
    record Appended(List<Long> revisions) implements AppendResult {
        public Appended {
            revisions = List.copyOf(revisions);
        }
    }

    /** Nothing of it stored, because others changed some of the things meanwhile. */
    record Conflicting(List<Clash> clashes) implements AppendResult {
        public Conflicting {
            clashes = List.copyOf(clashes);
        }
    }
}
