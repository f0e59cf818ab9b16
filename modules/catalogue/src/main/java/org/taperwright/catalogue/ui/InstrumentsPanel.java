package org.taperwright.catalogue.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.ui.EmptyState;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/** All instruments as a table that narrows as one types, with quick entry of new ones. */
public final class InstrumentsPanel extends JPanel {
    private static final String ROWS = "rows";
    private static final String NOTHING = "nothing";
    private static final String NOT_FOUND = "notFound";

    private final transient Desk desk;
    private final InstrumentTableModel model = new InstrumentTableModel();
    private final transient InstrumentSorter sorter = new InstrumentSorter(model);
    private final InstrumentTable table = new InstrumentTable(model, sorter);
    private final SearchField filter =
            new SearchField("instruments.filter", "Filter by name, size, taper, section, alloy, motion…");
    private final JLabel count = new JLabel(" ");
    private final QuickEntryBar quickEntry;
    private final CardLayout cards = new CardLayout();
    private final JPanel below = new JPanel(cards);
    private final transient List<Subscription> subscriptions = new ArrayList<>();
    private transient Snapshot shown = new Snapshot(0, java.util.Map.of());
    private boolean following;

    /** Makes the panel on a desk. */
    public InstrumentsPanel(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
        setName("instrumentsPanel");
        LibraryEdits edits = new LibraryEdits(desk);
        quickEntry = new QuickEntryBar(model::rows, this::enter);
        table.onOpen(desk::open);
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting()) {
                tell();
            }
        });
        ThingActions.on(table, edits, desk, table::selectedThings, () -> askForName(edits));
        filter.onChange(this::narrow);
        filter.onDown(() -> {
            table.requestFocusInWindow();
            if (table.getSelectedRow() < 0 && table.getRowCount() > 0) {
                table.setRowSelectionInterval(0, 0);
            }
        });
        count.setName("instruments.count");
        add(top(), BorderLayout.NORTH);
        add(cards(), BorderLayout.CENTER);
    }

    private JPanel top() {
        JPanel search = new JPanel(new BorderLayout(Spacing.NEAR, 0));
        search.setOpaque(false);
        search.add(filter, BorderLayout.CENTER);
        search.add(count, BorderLayout.LINE_END);
        JPanel top = new JPanel(new BorderLayout(0, Spacing.NEAR));
        top.setBorder(Spacing.around(Spacing.NEAR));
        top.add(search, BorderLayout.NORTH);
        top.add(quickEntry, BorderLayout.SOUTH);
        return top;
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
                        "Enter a size and a taper above; the rest is filled in. A range such as 15–40 adds all its "
                                + "sizes at once.",
                        List.of()),
                NOTHING);
        below.add(
                new EmptyState(
                        "instruments.notFound",
                        "No instrument matches",
                        "Every word must occur in a row. Shorten or clear the filter.",
                        List.of()),
                NOT_FOUND);
        return below;
    }

    @Override
    public void addNotify() {
        super.addNotify();
        attach();
    }

    /** Begins to follow the desk; ends when the panel is taken off its window. */
    void attach() {
        subscriptions.add(desk.onChange(this::show));
        subscriptions.add(desk.onSelect(this::follow));
        show(desk.snapshot());
    }

    @Override
    public void removeNotify() {
        subscriptions.forEach(Subscription::close);
        subscriptions.clear();
        super.removeNotify();
    }

    private void show(Snapshot snapshot) {
        shown = snapshot;
        desk.compute(this, "Listing instruments", new InstrumentRows(snapshot, model.rows()), outcome -> {
            if (outcome instanceof Outcome.Current<List<InstrumentRow>> current) {
                show(current.value());
            }
        });
    }

    private void show(List<InstrumentRow> rows) {
        if (!rows.equals(model.rows())) {
            List<ThingId> selected = table.selectedThings();
            following = true;
            boolean first = model.rows().isEmpty();
            model.show(rows);
            if (first) {
                table.fitColumns();
            }
            table.select(selected, false);
            following = false;
            quickEntry.refresh();
        }
        say();
        desk.selected(ThingKind.INSTRUMENT).ifPresent(this::follow);
    }

    private void narrow() {
        List<ThingId> selected = table.selectedThings();
        following = true;
        sorter.filter(filter.words());
        table.select(selected, false);
        following = false;
        say();
    }

    private void say() {
        int all = model.getRowCount();
        int through = sorter.getViewRowCount();
        count.setForeground(Ink.quiet());
        count.setText(
                all == through
                        ? String.format(Locale.UK, "%,d instruments", all)
                        : String.format(Locale.UK, "%,d of %,d instruments", through, all));
        cards.show(below, through > 0 ? ROWS : all == 0 ? NOTHING : NOT_FOUND);
    }

    private void follow(ThingId id) {
        boolean instrument = desk.snapshot()
                .entry(id)
                .filter(entry -> entry.kind() == ThingKind.INSTRUMENT)
                .isPresent();
        if (instrument && !table.selectedThings().contains(id)) {
            following = true;
            table.select(List.of(id), true);
            following = false;
        }
    }

    private void tell() {
        List<ThingId> selected = table.selectedThings();
        if (!following && selected.size() == 1) {
            desk.select(selected.get(0));
        }
    }

    private void enter(QuickEntry quick) {
        QuickEntry.Edit edit = quick.edit(model.rows());
        desk.edit(edit.name(), edit.changes());
        desk.select(edit.changes().get(0).id());
    }

    private void askForName(LibraryEdits edits) {
        ThingId id = table.selectedThings().get(0);
        shown.entry(id).ifPresent(found -> {
            Object name = JOptionPane.showInputDialog(
                    this, "New name", "Rename", JOptionPane.PLAIN_MESSAGE, null, null, found.name());
            if (name != null) {
                edits.rename(id, name.toString());
            }
        });
    }
}
