package org.taperwright.catalogue.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Duplicates;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Likeness;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.PanelDialog;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextRows;

/** Groups of instruments that are probably one: merge a group into one of its entries, or leave it as it is. */
final class DuplicatesPanel extends JPanel {
    private static final int MOST_SHOWN = 1000;

    private final transient Desk desk;
    private final TextRows groupRows = new TextRows(List.of("Alike", "Instruments", "First of them"));
    private final TextRows entryRows =
            new TextRows(List.of("Name", "Designation", "Type", "Maker", "Line", "Lot", "Stock"));
    private final JTable groups = new JTable(groupRows);
    private final JTable entries = new JTable(entryRows);
    private final Prose told = new Prose("Looking for duplicates…", Ink::quiet, false);
    private final JButton merge = new JButton("Merge into the entry selected");
    private final JButton leave = new JButton("Leave as they are");
    private transient List<Likeness> found = List.of();

    DuplicatesPanel(Desk desk) {
        super(new BorderLayout(0, Spacing.NEAR));
        this.desk = desk;
        setName("duplicates");
        told.setName("duplicates.told");
        dress(groups, "duplicates.groups", "Groups of instruments that are alike");
        dress(entries, "duplicates.entries", "Instruments of the group");
        groups.getSelectionModel().addListSelectionListener(event -> showEntries());
        merge.setName("duplicates.merge");
        merge.setToolTipText(
                "The entry selected stays and takes the stock of all; kits and sequences then refer to it");
        merge.addActionListener(event -> merge());
        leave.setName("duplicates.leave");
        leave.setToolTipText("Takes the group off this list; nothing in the library changes");
        leave.addActionListener(event -> group().ifPresent(this::forget));
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        buttons.add(merge);
        buttons.add(javax.swing.Box.createHorizontalStrut(Spacing.NEAR));
        buttons.add(leave);
        JPanel tables = new JPanel(new java.awt.GridLayout(2, 1, 0, Spacing.NEAR));
        tables.add(new JScrollPane(groups));
        tables.add(new JScrollPane(entries));
        add(told, BorderLayout.NORTH);
        add(tables, BorderLayout.CENTER);
        add(buttons, BorderLayout.SOUTH);
        setPreferredSize(new Dimension(760, 420));
        look();
    }

    private static void dress(JTable table, String name, String what) {
        table.setName(name);
        table.getAccessibleContext().setAccessibleName(what);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setShowGrid(false);
        table.setFillsViewportHeight(true);
    }

    /** Shows the panel in a dialog. */
    void show(Component over) {
        JButton close = new JButton("Close");
        PanelDialog dialog = new PanelDialog(over, "duplicatesDialog", "Duplicates", this, List.of(close));
        dialog.closing(close);
        dialog.show();
    }

    private void look() {
        Snapshot library = desk.snapshot();
        desk.compute(
                this,
                "Looking for duplicates",
                progress -> Duplicates.in(catalogue(library)).all(),
                outcome -> {
                    if (outcome instanceof Outcome.Current<List<Likeness>> current) {
                        show(current.value());
                    }
                });
    }

    private static Map<ThingId, Instrument> catalogue(Snapshot library) {
        Map<ThingId, Instrument> catalogue = new LinkedHashMap<>();
        for (Entry entry : library.ofKind(ThingKind.INSTRUMENT)) {
            catalogue.put(entry.id(), (Instrument) entry.thing());
        }
        return catalogue;
    }

    private void show(List<Likeness> likenesses) {
        found = List.copyOf(likenesses);
        List<List<String>> rows = new ArrayList<>();
        for (Likeness each : found.subList(0, Math.min(MOST_SHOWN, found.size()))) {
            rows.add(List.of(
                    each.kind().words(),
                    Integer.toString(each.entries().size()),
                    desk.snapshot()
                            .entry(each.entries().get(0))
                            .map(Entry::name)
                            .orElse("")));
        }
        groupRows.show(rows);
        told.setText(
                found.isEmpty()
                        ? "No two instruments look like one."
                        : String.format(Locale.UK, "%,d groups of instruments that are probably one", found.size())
                                + (found.size() > MOST_SHOWN ? "; the first " + MOST_SHOWN + " are shown." : "."));
        if (!rows.isEmpty()) {
            groups.setRowSelectionInterval(0, 0);
        }
        showEntries();
    }

    private Optional<Likeness> group() {
        int row = groups.getSelectedRow();
        return row < 0 || row >= found.size() ? Optional.empty() : Optional.of(found.get(row));
    }

    private void showEntries() {
        List<List<String>> rows = new ArrayList<>();
        group().ifPresent(group -> group.entries()
                .forEach(id -> desk.snapshot().thing(id, Instrument.class).ifPresent(each -> rows.add(row(each)))));
        entryRows.show(rows);
        if (!rows.isEmpty()) {
            entries.setRowSelectionInterval(0, 0);
        }
        merge.setEnabled(rows.size() > 1);
        leave.setEnabled(!rows.isEmpty());
    }

    private static List<String> row(Instrument instrument) {
        return List.of(
                instrument.name(),
                Designation.of(instrument).text(),
                instrument.type(),
                instrument.maker(),
                instrument.line(),
                instrument.supply().lot(),
                Integer.toString(instrument.supply().stock()));
    }

    private void merge() {
        group().ifPresent(group -> {
            ThingId kept = group.entries().get(Math.max(0, entries.getSelectedRow()));
            List<Change> changes = Merging.changes(desk.snapshot(), kept, group.entries());
            String name = desk.snapshot().entry(kept).map(Entry::name).orElse("");
            desk.edit("Merge " + group.entries().size() + " instruments into " + name, changes);
            look();
        });
    }

    private void forget(Likeness group) {
        List<Likeness> left = new ArrayList<>(found);
        left.remove(group);
        show(left);
    }
}
