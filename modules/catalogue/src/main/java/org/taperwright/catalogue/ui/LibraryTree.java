package org.taperwright.catalogue.ui;

import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.EventObject;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.DefaultCellEditor;
import javax.swing.JTextField;
import javax.swing.JTree;
import javax.swing.KeyStroke;
import javax.swing.event.TreeExpansionEvent;
import javax.swing.event.TreeExpansionListener;
import javax.swing.tree.TreePath;
import javax.swing.tree.TreeSelectionModel;
import org.jspecify.annotations.Nullable;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

/** The tree itself: keeps selection and expansion over edits, renames in place by F2, is a source to drag from. */
final class LibraryTree extends JTree {
    /** Headings with no more things than this stand open at first. */
    private static final int OPEN_AT_FIRST = 40;

    private final transient LibraryTreeModel library;
    private final transient Set<ThingKind> seen = EnumSet.noneOf(ThingKind.class);
    private final transient Set<ThingKind> open = EnumSet.noneOf(ThingKind.class);
    private boolean arranging;

    LibraryTree(LibraryTreeModel model) {
        super(model);
        library = model;
        setName("library.tree");
        getAccessibleContext().setAccessibleName("Things in the library");
        setRootVisible(false);
        setShowsRootHandles(true);
        setLargeModel(true);
        setCellRenderer(new LibraryTreeCells());
        setCellEditor(new NameEditor());
        setEditable(true);
        setInvokesStopCellEditing(true);
        getSelectionModel().setSelectionMode(TreeSelectionModel.DISCONTIGUOUS_TREE_SELECTION);
        setTransferHandler(new ThingDrag(this::selectedThings));
        rememberExpansion();
        fitRows();
    }

    /** Dragging needs a display, so it is switched on where there is one. */
    @Override
    public void addNotify() {
        super.addNotify();
        setDragEnabled(true);
    }

    /** Calls back when a person opens a thing, by a double click or Enter. */
    void onOpen(Consumer<ThingId> open) {
        setToggleClickCount(0);
        getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "open");
        getActionMap().put("open", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                openSelected(open);
            }
        });
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2 && getPathForLocation(event.getX(), event.getY()) != null) {
                    openSelected(open);
                }
            }
        });
    }

    private void openSelected(Consumer<ThingId> open) {
        List<ThingId> things = selectedThings();
        TreePath lead = getLeadSelectionPath();
        if (things.size() == 1) {
            open.accept(things.get(0));
        } else if (lead != null && lead.getLastPathComponent() instanceof LibraryTreeModel.Heading) {
            setExpandedState(lead, isCollapsed(lead));
        }
    }

    /** The things selected, in the order shown. */
    List<ThingId> selectedThings() {
        List<ThingId> ids = new ArrayList<>();
        TreePath[] paths = getSelectionPaths();
        if (paths != null) {
            for (TreePath path : paths) {
                if (path.getLastPathComponent() instanceof LibraryTreeModel.Thing thing) {
                    ids.add(thing.id());
                }
            }
        }
        return ids;
    }

    /** Selects a thing alone and scrolls to it, if it is shown beneath an open heading; opens none. */
    void reveal(ThingId id) {
        if (selectedThings().equals(List.of(id))) {
            return;
        }
        clearSelection();
        library.path(id).filter(path -> isExpanded(path.getParentPath())).ifPresent(path -> {
            setSelectionPath(path);
            scrollPathToVisible(path);
        });
    }

    /** Scrolls up and down only: sideways it would push the headings out of sight. */
    @Override
    public void scrollRectToVisible(Rectangle area) {
        super.scrollRectToVisible(new Rectangle(getVisibleRect().x, area.y, 1, area.height));
    }

    /**
     * Runs a change of the model and puts selection and expansion back after it.
     *
     * @param searching whether a search narrows the tree: then every heading opens, without being remembered as open
     */
    void keeping(boolean searching, Runnable change) {
        List<ThingId> selected = selectedThings();
        arranging = true;
        change.run();
        for (int i = library.getChildCount(library.getRoot()) - 1; i >= 0; i--) {
            LibraryTreeModel.Heading heading = (LibraryTreeModel.Heading) library.getChild(library.getRoot(), i);
            int count = library.count(heading);
            if (!searching && count > 0 && seen.add(heading.kind()) && count <= OPEN_AT_FIRST) {
                open.add(heading.kind());
            }
            if (searching || open.contains(heading.kind())) {
                expandPath(new TreePath(new Object[] {library.getRoot(), heading}));
            }
        }
        arranging = false;
        selected.forEach(id -> library.path(id).ifPresent(this::addSelectionPath));
    }

    private void rememberExpansion() {
        addTreeExpansionListener(new TreeExpansionListener() {
            @Override
            public void treeExpanded(TreeExpansionEvent event) {
                if (!arranging && event.getPath().getLastPathComponent() instanceof LibraryTreeModel.Heading heading) {
                    open.add(heading.kind());
                }
            }

            @Override
            public void treeCollapsed(TreeExpansionEvent event) {
                if (!arranging && event.getPath().getLastPathComponent() instanceof LibraryTreeModel.Heading heading) {
                    open.remove(heading.kind());
                }
            }
        });
    }

    @Override
    public void updateUI() {
        super.updateUI();
        fitRows();
    }

    private void fitRows() {
        setRowHeight(getFontMetrics(getFont()).getHeight() + 6);
    }

    @Override
    public boolean isPathEditable(TreePath path) {
        return path.getLastPathComponent() instanceof LibraryTreeModel.Thing;
    }

    @Override
    public String convertValueToText(
            Object node, boolean selected, boolean expanded, boolean leaf, int row, boolean focused) {
        if (node instanceof LibraryTreeModel.Thing thing && library != null) {
            return library.entry(thing).map(entry -> entry.name()).orElse("");
        }
        return node instanceof LibraryTreeModel.Heading heading ? heading.kind().heading() : "";
    }

    /** Renames only when asked to by F2 or the menu, never by a click, which selects or opens. */
    private static final class NameEditor extends DefaultCellEditor {
        NameEditor() {
            super(new JTextField());
            getComponent().setName("library.rename");
        }

        @Override
        public boolean isCellEditable(@Nullable EventObject event) {
            return event == null;
        }
    }
}
