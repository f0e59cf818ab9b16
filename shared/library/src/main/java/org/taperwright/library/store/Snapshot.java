package org.taperwright.library.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.store.tree.SortedTree;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.measured.OwnAlloy;

/**
 * An immutable view of everything in the library at one revision. The next one shares with it all that did not change, so
 * that an edit of one thing costs little however many there are.
 */
public final class Snapshot {
    private final long revision;
    private final SortedTree<ThingId, Entry> byId;
    private final Map<ThingKind, SortedTree<Entry, Entry>> byKind;

    private Snapshot(long revision, SortedTree<ThingId, Entry> byId, Map<ThingKind, SortedTree<Entry, Entry>> byKind) {
        this.revision = revision;
        this.byId = byId;
        this.byKind = byKind;
    }

    /** A library of these entries, each under its identifier. */
    public Snapshot(long revision, Map<ThingId, Entry> entries) {
        this(revision, entries.values());
    }

    /** A library of these entries, no identifier twice. */
    Snapshot(long revision, Collection<Entry> entries) {
        this(revision, byId(entries), byKind(entries));
    }

    private static SortedTree<ThingId, Entry> byId(Collection<Entry> entries) {
        List<Entry> sorted = new ArrayList<>(entries);
        sorted.sort(Comparator.comparing(Entry::id));
        return SortedTree.ofSorted(Comparator.<ThingId>naturalOrder(), sorted, Entry::id);
    }

    private static Map<ThingKind, SortedTree<Entry, Entry>> byKind(Collection<Entry> entries) {
        Map<ThingKind, List<Entry>> lists = new EnumMap<>(ThingKind.class);
        entries.forEach(entry ->
                lists.computeIfAbsent(entry.kind(), kind -> new ArrayList<>()).add(entry));
        Map<ThingKind, SortedTree<Entry, Entry>> trees = new EnumMap<>(ThingKind.class);
        lists.forEach((kind, list) -> {
            list.sort(Entry.BY_NAME);
            trees.put(kind, SortedTree.ofSorted(Entry.BY_NAME, list, entry -> entry));
        });
        return trees;
    }

    /** The library after some things were put in, in the place of those with the same identifier, and some taken out. */
    public Snapshot with(long next, Collection<Entry> put, Collection<ThingId> takenOut) {
        SortedTree<ThingId, Entry> things = byId;
        Map<ThingKind, SortedTree<Entry, Entry>> kinds = new EnumMap<>(ThingKind.class);
        kinds.putAll(byKind);
        for (ThingId id : takenOut) {
            things.get(id).ifPresent(old -> leave(kinds, old));
            things = things.without(id);
        }
        for (Entry entry : put) {
            things.get(entry.id()).ifPresent(old -> leave(kinds, old));
            things = things.with(entry.id(), entry);
            kinds.merge(
                    entry.kind(),
                    SortedTree.<Entry, Entry>empty(Entry.BY_NAME).with(entry, entry),
                    (all, one) -> all.with(entry, entry));
        }
        return new Snapshot(next, things, kinds);
    }

    private static void leave(Map<ThingKind, SortedTree<Entry, Entry>> kinds, Entry old) {
        kinds.computeIfPresent(old.kind(), (kind, tree) -> tree.without(old));
    }

    /** Number of the last revision. */
    public long revision() {
        return revision;
    }

    /** All entries by identifier, in the order of the identifiers. */
    public Map<ThingId, Entry> entries() {
        return byId.asMap(ThingId.class);
    }

    /** The entry of an identifier. */
    public Optional<Entry> entry(ThingId id) {
        return byId.get(id);
    }

    /** The thing of an identifier, if it is of that type. */
    public <T extends Record> Optional<T> thing(ThingId id, Class<T> type) {
        return entry(id).map(Entry::thing).filter(type::isInstance).map(type::cast);
    }

    /** Entries of a kind, by name; costs nothing to ask for. */
    public List<Entry> ofKind(ThingKind kind) {
        SortedTree<Entry, Entry> tree = byKind.get(kind);
        return tree == null ? List.of() : tree.values();
    }

    /** The alloys that designs can name: those that come with the program and the library's own. */
    public KnownAlloys alloys() {
        List<Alloy> own = new ArrayList<>();
        for (Entry entry : ofKind(ThingKind.ALLOY)) {
            if (entry.thing() instanceof OwnAlloy alloy) {
                own.add(alloy.alloy(entry.id()));
            }
        }
        return new KnownAlloys(own);
    }

    /** What differs from an older view of the same library; costs what differs, not what there is. */
    public SnapshotDifference since(Snapshot older) {
        List<Entry> added = new ArrayList<>();
        List<SnapshotDifference.Changed> changed = new ArrayList<>();
        List<Entry> removed = new ArrayList<>();
        byId.since(older.byId, new SortedTree.Differences<>() {
            @Override
            public void added(Entry entry) {
                added.add(entry);
            }

            @Override
            public void changed(Entry before, Entry after) {
                changed.add(new SnapshotDifference.Changed(before, after));
            }

            @Override
            public void removed(Entry entry) {
                removed.add(entry);
            }
        });
        return new SnapshotDifference(added, changed, removed);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Snapshot that
                && revision == that.revision
                && entries().equals(that.entries());
    }

    @Override
    public int hashCode() {
        return 31 * Long.hashCode(revision) + entries().hashCode();
    }

    @Override
    public String toString() {
        return "Snapshot[revision=" + revision + ", " + byId.size() + " things]";
    }
}
