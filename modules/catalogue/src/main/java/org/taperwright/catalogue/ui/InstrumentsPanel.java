package org.taperwright.catalogue.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.prefs.Preferences;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import org.taperwright.catalogue.ui.entry.InstrumentPane;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.SavedFilter;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.ui.EmptyState;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.RowLabel;
import org.taperwright.workbench.ui.Spacing;

/**
 * All instruments as a table that narrows as one types, with quick entry of new ones and, beside it, every field of what is
 * selected. The list is made off the event thread, however long it is.
 */
public final class InstrumentsPanel extends JPanel {
    private static final String ROWS = "rows";
    private static final String NOTHING = "nothing";
    private static final String NOT_FOUND = "notFound";
    /** Less than there mostly is: what is left over goes to the table, so that the fields keep their width. */
    private static final Dimension NARROW = new Dimension(420, 200);

    private static final Dimension NARROWEST = new Dimension(200, 80);
    private static final Dimension PANE = new Dimension(350, 200);

    private final transient Desk desk;
    private final InstrumentTableModel model = new InstrumentTableModel();
    private final transient InstrumentSorter sorter = new InstrumentSorter(model);
    private final InstrumentTable table = new InstrumentTable(model, sorter);
    private final InstrumentSearch search;
    private final RowLabel count = new RowLabel(" ").tone(Ink::quiet);
    private final SeriesBar entry;
    private final InstrumentPane pane;
    private final JSplitPane split = new JSplitPane();
    private final CardLayout cards = new CardLayout();
    private final JPanel below = new JPanel(cards);
    private final transient List<Subscription> subscriptions = new ArrayList<>();
    private boolean following;

    /**
     * Makes the panel on a desk.
     *
     * @param settings where the columns chosen and the filters saved are remembered
     */
    public InstrumentsPanel(Desk desk, Preferences settings) {
        super(new BorderLayout());
        this.desk = desk;
        setName("instrumentsPanel");
        LibraryEdits edits = new LibraryEdits(desk);
        search = new InstrumentSearch(desk, settings, count);
        entry = new SeriesBar(desk, model::list, this::enter);
        pane = new InstrumentPane(desk);
        table.onOpen(desk::open);
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting()) {
                tell();
            }
        });
        ThingActions.on(table, edits, desk, table::selectedThings, () -> askForName(edits));
        ChosenColumns columns = ChosenColumns.on(table, settings);
        table.getTableHeader().addMouseListener(new HeadingMenu(columns));
        sorter.onOrder(any -> relist());
        search.onChange(this::relist);
        search.onDown(() -> {
            table.requestFocusInWindow();
            if (table.getSelectedRow() < 0 && table.getRowCount() > 0) {
                table.setRowSelectionInterval(0, 0);
            }
        });
        count.setName("instruments.count");
        search.button("Duplicates…", "Finds instruments that are probably one", this::showDuplicates);
        search.button(
                "Columns",
                "Which columns the table shows",
                button -> columns.menu().show(button, 0, button.getHeight()));
        JPanel top = new JPanel(new BorderLayout(0, Spacing.NEAR));
        top.setBorder(Spacing.around(Spacing.NEAR));
        top.add(search, BorderLayout.NORTH);
        top.add(entry, BorderLayout.SOUTH);
        JPanel left = new JPanel(new BorderLayout());
        left.add(top, BorderLayout.NORTH);
        left.add(cards(), BorderLayout.CENTER);
        split.setLeftComponent(left);
        split.setRightComponent(pane);
        split.setResizeWeight(1);
        split.setBorder(BorderFactory.createEmptyBorder());
        left.setPreferredSize(NARROW);
        left.setMinimumSize(NARROWEST);
        pane.setPreferredSize(PANE);
        pane.setMinimumSize(NARROWEST);
        add(split, BorderLayout.CENTER);
    }

    private JPanel cards() {
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        scroll.setBorder(BorderFactory.createEmptyBorder());
        below.add(scroll, ROWS);
        below.add(
                new EmptyState(
                        "instruments.empty",
                        "No instruments yet",
                        "Enter sizes and a taper above; the rest is filled in. A range such as 15–40 adds all its "
                                + "sizes at once. Tables and bundles come in through File, Import.",
                        List.of()),
                NOTHING);
        below.add(
                new EmptyState(
                        "instruments.notFound",
                        "No instrument matches",
                        "Every word and every condition must hold for a row. Shorten or clear the filter.",
                        List.of(clearing())),
                NOT_FOUND);
        return below;
    }

    private Action clearing() {
        return new AbstractAction("Clear the filter") {
            @Override
            public void actionPerformed(ActionEvent event) {
                search.show(InstrumentFilter.ALL);
            }
        };
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
        relist();
    }

    @Override
    public void removeNotify() {
        subscriptions.forEach(Subscription::close);
        subscriptions.clear();
        super.removeNotify();
    }

    /** The instruments selected in the table, for whoever exports them. */
    public List<ThingId> selectedThings() {
        return table.selectedThings();
    }

    /** Asks for the list as library, order and filter stand now. */
    private void relist() {
        InstrumentListing listing =
                new InstrumentListing(model.list(), desk.snapshot(), sorter.getSortKeys(), search.filter());
        desk.compute(this, "Listing instruments", listing, outcome -> {
            if (outcome instanceof Outcome.Current<InstrumentList> current) {
                show(current.value());
            }
        });
    }

    private void show(InstrumentList list) {
        List<ThingId> selected = table.selectedThings();
        InstrumentList before = model.list();
        following = true;
        model.show(list);
        if (before.rows().isEmpty() && !list.rows().isEmpty()) {
            table.fitColumns();
        }
        table.select(selected, false);
        following = false;
        if (before.choices() != list.choices() || before.rows() != list.rows()) {
            search.offer(list.choices());
            entry.refresh();
        }
        say(list);
        desk.selected(ThingKind.INSTRUMENT).ifPresent(this::follow);
        pane.show(table.selectedThings());
    }

    private void say(InstrumentList list) {
        int all = list.rows().size();
        int through = list.shown().length;
        count.setText(
                all == through
                        ? String.format(Locale.UK, "%,d instruments", all)
                        : String.format(Locale.UK, "%,d of %,d instruments", through, all));
        cards.show(below, through > 0 ? ROWS : all == 0 ? NOTHING : NOT_FOUND);
    }

    private void follow(ThingId id) {
        desk.snapshot().thing(id, SavedFilter.class).ifPresent(saved -> search.show(saved.filter()));
        if (model.list().place(id).isPresent()
                && table.getSelectedRowCount() <= 1
                && !table.selectedThings().contains(id)) {
            following = true;
            table.select(List.of(id), true);
            following = false;
            pane.show(table.selectedThings());
        }
    }

    private void tell() {
        if (following) {
            return;
        }
        List<ThingId> selected = table.selectedThings();
        pane.show(selected);
        if (selected.size() == 1) {
            desk.select(selected.get(0));
        }
    }

    private void enter(SeriesPreview added) {
        table.clearSelection();
        if (desk.edit(added.name(), added.changes())) {
            desk.select(added.changes().get(0).id());
        }
    }

    private void showDuplicates(java.awt.Component over) {
        new DuplicatesPanel(desk).show(over);
    }

    private void askForName(LibraryEdits edits) {
        ThingId id = table.selectedThings().get(0);
        desk.snapshot().entry(id).ifPresent(found -> {
            Object name = JOptionPane.showInputDialog(
                    this, "New name", "Rename", JOptionPane.PLAIN_MESSAGE, null, null, found.name());
            if (name != null) {
                edits.rename(id, name.toString());
            }
        });
    }
}
