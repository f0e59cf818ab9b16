package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.event.TreeModelEvent;
import javax.swing.event.TreeModelListener;
import javax.swing.tree.TreeModel;
import javax.swing.tree.TreePath;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

/**
 * The library as a tree: a heading for each kind, beneath it the things of that kind that a search lets through, by
 * name. Nodes are identified by kind and by identifier, so that selection and expansion outlive an edit.
 */
final class LibraryTreeModel implements TreeModel {
    /** A node of the tree. */
    sealed interface Node {}

    /** The root, which is not shown. */
    record Root() implements Node {}

    /** The heading of a kind. */
    record Heading(ThingKind kind) implements Node {}

    /** A thing. */
    record Thing(ThingId id) implements Node {}

    private static final Root ROOT = new Root();

    private final List<TreeModelListener> listeners = new ArrayList<>();
    private final LibraryEdits edits;
    private Map<ThingKind, List<Entry>> shown = new EnumMap<>(ThingKind.class);
    private List<Heading> headings = List.of();
    private Snapshot snapshot = new Snapshot(0, Map.of());
    private SearchWords words = SearchWords.of("");

    LibraryTreeModel(LibraryEdits edits) {
        this.edits = edits;
        for (ThingKind kind : ThingKind.values()) {
            shown.put(kind, List.of());
        }
    }

    /** Shows a snapshot through a search. Headings without things stand only when nothing is searched for. */
    void show(Snapshot newSnapshot, SearchWords newWords) {
        Set<ThingKind> stale = newWords.equals(words) ? stale(newSnapshot) : EnumSet.allOf(ThingKind.class);
        snapshot = newSnapshot;
        words = newWords;
        if (stale.isEmpty()) {
            return;
        }
        Map<ThingKind, List<Entry>> byKind = new EnumMap<>(ThingKind.class);
        for (ThingKind kind : ThingKind.values()) {
            byKind.put(kind, stale.contains(kind) ? new ArrayList<>() : shown.get(kind));
        }
        for (Entry entry : newSnapshot.entries().values()) {
            if (stale.contains(entry.kind()) && (words.none() || words.in(SearchWords.fold(entry.name())))) {
                byKind.get(entry.kind()).add(entry);
            }
        }
        stale.forEach(kind -> byKind.put(kind, byName(byKind.get(kind))));
        shown = byKind;
        headings = byKind.entrySet().stream()
                .filter(kind -> words.none() || !kind.getValue().isEmpty())
                .map(kind -> new Heading(kind.getKey()))
                .toList();
        TreeModelEvent event = new TreeModelEvent(this, new TreePath(ROOT));
        List.copyOf(listeners).forEach(listener -> listener.treeStructureChanged(event));
    }

    /** Sorts by keys made once for each entry. */
    private static List<Entry> byName(List<Entry> entries) {
        record Keyed(String key, Entry entry) {}
        return entries.stream()
                .map(entry -> new Keyed(NaturalOrder.key(entry.name()), entry))
                .sorted(Comparator.comparing(Keyed::key)
                        .thenComparing(keyed -> keyed.entry().id()))
                .map(Keyed::entry)
                .toList();
    }

    /** The kinds whose things are not the ones shown. */
    private Set<ThingKind> stale(Snapshot newSnapshot) {
        Set<ThingKind> stale = EnumSet.noneOf(ThingKind.class);
        newSnapshot.entries().forEach((id, entry) -> {
            if (snapshot.entries().get(id) != entry) {
                stale.add(entry.kind());
            }
        });
        snapshot.entries().forEach((id, entry) -> {
            if (!newSnapshot.entries().containsKey(id)) {
                stale.add(entry.kind());
            }
        });
        return stale;
    }

    /** The entry behind a node, as the snapshot shown holds it. */
    Optional<Entry> entry(Thing thing) {
        return snapshot.entry(thing.id());
    }

    /** How many things stand beneath a heading. */
    int count(Heading heading) {
        return shown.getOrDefault(heading.kind(), List.of()).size();
    }

    /** How many things are shown in all. */
    int count() {
        return headings.stream().mapToInt(this::count).sum();
    }

    /** The path to a thing, if it is shown. */
    Optional<TreePath> path(ThingId id) {
        return snapshot.entry(id)
                .filter(entry -> shown.get(entry.kind()).contains(entry))
                .map(entry -> new TreePath(new Object[] {ROOT, new Heading(entry.kind()), new Thing(id)}));
    }

    @Override
    public Object getRoot() {
        return ROOT;
    }

    @Override
    public Object getChild(Object parent, int index) {
        return parent instanceof Heading heading
                ? new Thing(shown.get(heading.kind()).get(index).id())
                : headings.get(index);
    }

    @Override
    public int getChildCount(Object parent) {
        if (parent instanceof Heading heading) {
            return count(heading);
        }
        return parent instanceof Root ? headings.size() : 0;
    }

    @Override
    public boolean isLeaf(Object node) {
        return node instanceof Thing;
    }

    @Override
    public void valueForPathChanged(TreePath path, Object newValue) {
        if (path.getLastPathComponent() instanceof Thing thing) {
            edits.rename(thing.id(), newValue.toString());
        }
    }

    @Override
    public int getIndexOfChild(Object parent, Object child) {
        if (parent instanceof Heading heading && child instanceof Thing thing) {
            List<Entry> entries = shown.get(heading.kind());
            for (int i = 0; i < entries.size(); i++) {
                if (entries.get(i).id().equals(thing.id())) {
                    return i;
                }
            }
            return -1;
        }
        return child instanceof Heading heading ? headings.indexOf(heading) : -1;
    }

    @Override
    public void addTreeModelListener(TreeModelListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeTreeModelListener(TreeModelListener listener) {
        listeners.remove(listener);
    }
}
