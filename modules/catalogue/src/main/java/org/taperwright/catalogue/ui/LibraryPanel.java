package org.taperwright.catalogue.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.ui.EmptyState;
import org.taperwright.workbench.ui.Spacing;

/** Everything in the library, by kind, with a search box; what is selected here is selected everywhere. */
public final class LibraryPanel extends JPanel {
    private static final String THINGS = "things";
    private static final String NOTHING = "nothing";
    private static final String NOT_FOUND = "notFound";

    private final transient Desk desk;
    private final transient LibraryTreeModel model;
    private final LibraryTree tree;
    private final SearchField search = new SearchField("library.search", "Search the library");
    private final CardLayout cards = new CardLayout();
    private final JPanel below = new JPanel(cards);
    private final transient List<Subscription> subscriptions = new ArrayList<>();
    private boolean following;
    private boolean listed;
    private transient Optional<ThingId> wanted = Optional.empty();

    /** Makes the panel on a desk. */
    public LibraryPanel(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
        setName("libraryPanel");
        LibraryEdits edits = new LibraryEdits(desk);
        model = new LibraryTreeModel(edits);
        tree = new LibraryTree(model);
        tree.onOpen(desk::open);
        tree.addTreeSelectionListener(event -> tell());
        ThingActions.on(
                tree, edits, desk, tree::selectedThings, () -> tree.startEditingAtPath(tree.getLeadSelectionPath()));
        search.onChange(this::relist);
        search.onDown(tree::requestFocusInWindow);
        JPanel top = new JPanel(new BorderLayout());
        top.setBorder(Spacing.around(Spacing.NEAR));
        top.add(search);
        JScrollPane scroll = new JScrollPane(tree);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        below.add(scroll, THINGS);
        below.add(
                new EmptyState(
                        "library.empty",
                        "The library is empty",
                        "Make a design in the Design window, or enter an instrument by size and taper in the "
                                + "Instruments window.",
                        List.of()),
                NOTHING);
        below.add(
                new EmptyState(
                        "library.notFound",
                        "Nothing bears that name",
                        "Every word must occur in a thing's name. Shorten or clear the search.",
                        List.of()),
                NOT_FOUND);
        add(top, BorderLayout.NORTH);
        add(below, BorderLayout.CENTER);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        attach();
    }

    /** Begins to follow the desk; ends when the panel is taken off its window. */
    void attach() {
        subscriptions.add(desk.onChange(any -> relist()));
        subscriptions.add(desk.onSelect(this::follow));
        wanted = desk.selected();
        relist();
    }

    @Override
    public void removeNotify() {
        subscriptions.forEach(Subscription::close);
        subscriptions.clear();
        super.removeNotify();
    }

    private void relist() {
        LibraryListing listing = new LibraryListing(model.contents(), desk.snapshot(), search.words());
        desk.compute(this, "Listing the library", listing, outcome -> {
            if (outcome instanceof Outcome.Current<LibraryContents> current) {
                show(current.value());
            }
        });
    }

    private void show(LibraryContents contents) {
        if (contents.changed() || !listed) {
            listed = true;
            following = true;
            tree.keeping(!contents.words().none(), () -> model.show(contents));
            following = false;
        } else {
            model.keep(contents);
        }
        boolean nothing = model.count() == 0;
        cards.show(below, !nothing ? THINGS : contents.words().none() ? NOTHING : NOT_FOUND);
        Optional<ThingId> waiting = wanted;
        waiting.ifPresent(this::follow);
    }

    /** Reveals a thing; one that is not listed yet is revealed when it is. */
    private void follow(ThingId id) {
        boolean current = model.contents().snapshot() == desk.snapshot();
        wanted = current ? Optional.empty() : Optional.of(id);
        following = true;
        tree.reveal(id);
        following = false;
    }

    private void tell() {
        List<ThingId> selected = tree.selectedThings();
        if (!following && selected.size() == 1) {
            desk.select(selected.get(0));
        }
    }
}
