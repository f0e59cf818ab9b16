package org.taperwright.library.store;

import java.util.List;

/**
 * What differs between two views of a library, in the order of the identifiers.
 *
 * @param added entries that only the newer has
 * @param changed entries that both have, with another thing or revision
 * @param removed entries that only the older has
 */
public record SnapshotDifference(List<Entry> added, List<Changed> changed, List<Entry> removed) {
    public SnapshotDifference {
        added = List.copyOf(added);
        changed = List.copyOf(changed);
        removed = List.copyOf(removed);
    }

    /** An entry before and after. */
    public record Changed(Entry before, Entry after) {}

    /** Whether nothing differs. */
    public boolean empty() {
        return added.isEmpty() && changed.isEmpty() && removed.isEmpty();
    }
}
