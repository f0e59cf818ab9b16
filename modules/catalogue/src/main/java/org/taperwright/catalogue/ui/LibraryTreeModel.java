package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.event.TreeModelEvent;
import javax.swing.event.TreeModelListener;
import javax.swing.tree.TreeModel;
import javax.swing.tree.TreePath;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

/**
 * The library as a tree: a heading for each kind, beneath it the things of that kind that a search lets through, by
 * name. Nodes are identified by kind and by identifier, so that selection and expansion outlive an edit. What stands
 * beneath a heading is listed off the event thread by {@link LibraryListing}.
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
    private LibraryContents contents = LibraryContents.nothing();
    private List<Heading> headings = headings(contents);

    LibraryTreeModel(LibraryEdits edits) {
        this.edits = edits;
    }

    /** What is shown. */
    LibraryContents contents() {
        return contents;
    }

    /** Shows other contents. */
    void show(LibraryContents shown) {
        contents = shown;
        headings = headings(shown);
        TreeModelEvent event = new TreeModelEvent(this, new TreePath(ROOT));
        List.copyOf(listeners).forEach(listener -> listener.treeStructureChanged(event));
    }

    /** Takes over contents that show the same. */
    void keep(LibraryContents same) {
        contents = same;
    }

    /** Headings without things stand only when nothing is searched for. */
    private static List<Heading> headings(LibraryContents contents) {
        return Stream.of(ThingKind.values())
                .filter(kind -> contents.words().none() || !contents.of(kind).isEmpty())
                .map(Heading::new)
                .toList();
    }

    /** The entry behind a node, as the snapshot shown holds it. */
    Optional<Entry> entry(Thing thing) {
        return contents.snapshot().entry(thing.id());
    }

    /** How many things stand beneath a heading. */
    int count(Heading heading) {
        return contents.of(heading.kind()).size();
    }

    /** How many things are shown in all. */
    int count() {
        return headings.stream().mapToInt(this::count).sum();
    }

    /** The path to a thing, if it is shown. */
    Optional<TreePath> path(ThingId id) {
        return contents.place(id)
                .flatMap(place -> contents.snapshot().entry(id))
                .map(entry -> new TreePath(new Object[] {ROOT, new Heading(entry.kind()), new Thing(id)}));
    }

    @Override
    public Object getRoot() {
        return ROOT;
    }

    @Override
    public Object getChild(Object parent, int index) {
        return parent instanceof Heading heading
                ? new Thing(contents.of(heading.kind()).get(index).id())
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
            return contents.place(thing.id()).orElse(-1);
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
