package org.taperwright.library.search;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.SnapshotDifference;
import org.taperwright.library.store.ThingKind;
import org.taperwright.library.store.tree.SortedTree;

/**
 * The instruments of a library, ready to be filtered. Immutable; the index of the next snapshot is made from the one before
 * and costs what changed.
 */
public final class InstrumentIndex {
    private final Snapshot snapshot;
    private final SortedTree<Entry, SoughtInstrument> byName;

    private InstrumentIndex(Snapshot snapshot, SortedTree<Entry, SoughtInstrument> byName) {
        this.snapshot = snapshot;
        this.byName = byName;
    }

    /** The index of a library: off the event thread for a large one. */
    public static InstrumentIndex of(Snapshot snapshot) {
        List<SoughtInstrument> sought = new ArrayList<>();
        snapshot.ofKind(ThingKind.INSTRUMENT).forEach(entry -> sought.add(SoughtInstrument.of(entry)));
        return new InstrumentIndex(snapshot, SortedTree.ofSorted(Entry.BY_NAME, sought, SoughtInstrument::entry));
    }

    /** The index of a later view of the same library. */
    public InstrumentIndex next(Snapshot later) {
        SnapshotDifference difference = later.since(snapshot);
        SortedTree<Entry, SoughtInstrument> tree = byName;
        for (Entry removed : difference.removed()) {
            tree = tree.without(removed);
        }
        for (SnapshotDifference.Changed changed : difference.changed()) {
            tree = with(tree.without(changed.before()), changed.after());
        }
        for (Entry added : difference.added()) {
            tree = with(tree, added);
        }
        return new InstrumentIndex(later, tree);
    }

    private static SortedTree<Entry, SoughtInstrument> with(SortedTree<Entry, SoughtInstrument> tree, Entry entry) {
        return entry.kind() == ThingKind.INSTRUMENT ? tree.with(entry, SoughtInstrument.of(entry)) : tree;
    }

    /** The view of the library that it is of. */
    public Snapshot snapshot() {
        return snapshot;
    }

    /** The instruments that a filter finds, by name. */
    public List<Entry> find(InstrumentFilter filter) {
        FilterMatch match = new FilterMatch(filter, snapshot);
        List<Entry> found = new ArrayList<>();
        for (SoughtInstrument each : byName.values()) {
            if (match.holds(each)) {
                found.add(each.entry());
            }
        }
        return found;
    }
}
