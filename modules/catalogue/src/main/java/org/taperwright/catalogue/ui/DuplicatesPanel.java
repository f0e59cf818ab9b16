package org.taperwright.catalogue.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import org.taperwright.library.history.Merging;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Likeness;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.NamedEdit;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.PanelDialog;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextTable;

/** Groups of instruments that are probably one: merge a group into one of its entries, or leave it as it is. */
final class DuplicatesPanel extends JPanel {
    private static final int BETWEEN_CHECKS = 500;

    private final transient Desk desk;
    private final TextTable groups = new TextTable(
            "duplicates.groups",
            "Groups of instruments that are alike",
            List.of("Alike", "Instruments", "First of them"),
            List.of(260, 90, 390));
    private final TextTable entries = new TextTable(
            "duplicates.entries",
            "Instruments of the group",
            List.of("Name", "Designation", "Type", "Maker", "Line", "Lot", "Stock"),
            List.of(200, 100, 140, 110, 90, 70, 50));
    private final Prose told = new Prose("Looking for duplicates…", Ink::text, false);
    private final JButton merge = new JButton("Merge into the entry selected");
    private final JButton leave = new JButton("Leave as they are");
    private final transient Set<Likeness> left = new HashSet<>();
    private transient DuplicateGroups shown = DuplicateGroups.NONE;
    /** The group whose entries are listed; those of another may still be on their way. */
    private transient Optional<Likeness> listed = Optional.empty();

    private transient Optional<Subscription> following = Optional.empty();

    DuplicatesPanel(Desk desk) {
        super(new BorderLayout(0, Spacing.NEAR));
        this.desk = desk;
        setName("duplicates");
        told.setName("duplicates.told");
        groups.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        entries.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        groups.getSelectionModel().addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting()) {
                showEntries();
            }
        });
        merge.setName("duplicates.merge");
        merge.setToolTipText(
                "The entry selected stays and takes the stock of all; kits and sequences then refer to it");
        merge.addActionListener(event -> listed.ifPresent(this::merge));
        leave.setName("duplicates.leave");
        leave.setToolTipText("Takes the group off this list; nothing in the library changes");
        leave.addActionListener(event -> group().ifPresent(group -> {
            left.add(group);
            look();
        }));
        JPanel buttons = new JPanel(new ShrinkingRow(Spacing.NEAR));
        buttons.add(merge);
        buttons.add(leave);
        JPanel tables = new JPanel(new GridLayout(2, 1, 0, Spacing.NEAR));
        tables.add(groups.scrolled());
        tables.add(entries.scrolled());
        add(told, BorderLayout.NORTH);
        add(tables, BorderLayout.CENTER);
        add(buttons, BorderLayout.SOUTH);
        setPreferredSize(new Dimension(760, 420));
        wake();
        look();
    }

    @Override
    public void addNotify() {
        super.addNotify();
        following = Optional.of(desk.onChange(any -> look()));
    }

    @Override
    public void removeNotify() {
        following.ifPresent(Subscription::close);
        following = Optional.empty();
        super.removeNotify();
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
        Set<Likeness> without = Set.copyOf(left);
        desk.compute(
                this, "Looking for duplicates", progress -> DuplicateGroups.in(library, without, progress), outcome -> {
                    if (outcome instanceof Outcome.Current<DuplicateGroups> current) {
                        show(current.value());
                    } else if (outcome instanceof Outcome.Failed<DuplicateGroups> failed) {
                        told.setText(failed.reason());
                    } else {
                        told.setText("Stopped.");
                    }
                });
    }

    private void show(DuplicateGroups now) {
        int place = Math.max(0, groups.getSelectedRow());
        shown = now;
        groups.show(now.rows());
        told.setText(words(now.found().size()));
        if (!now.rows().isEmpty()) {
            int kept = Math.min(place, now.rows().size() - 1);
            groups.setRowSelectionInterval(kept, kept);
        }
        showEntries();
    }

    private static String words(int found) {
        if (found == 0) {
            return "No two instruments look like one.";
        }
        String groups = found == 1
                ? "1 group of instruments that are probably one"
                : String.format(Locale.UK, "%,d groups of instruments that are probably one", found);
        return groups
                + (found > DuplicateGroups.MOST_SHOWN
                        ? String.format(Locale.UK, "; the first %,d are shown.", DuplicateGroups.MOST_SHOWN)
                        : ".");
    }

    private Optional<Likeness> group() {
        int row = groups.getSelectedRow();
        return row < 0 || row >= shown.rows().size()
                ? Optional.empty()
                : Optional.of(shown.found().get(row));
    }

    /** Lists the entries of the group selected; until they are there, nothing can be merged. */
    private void showEntries() {
        listed = Optional.empty();
        wake();
        Optional<Likeness> wanted = group();
        Snapshot library = desk.snapshot();
        desk.compute(entries, "Listing the group", progress -> rows(wanted, library, progress), outcome -> {
            if (outcome instanceof Outcome.Current<List<List<String>>> current) {
                entries.show(current.value());
                listed = wanted.filter(group -> current.value().size() > 1);
                if (!current.value().isEmpty()) {
                    entries.setRowSelectionInterval(0, 0);
                }
                wake();
            }
        });
    }

    private void wake() {
        merge.setEnabled(listed.isPresent());
        leave.setEnabled(group().isPresent());
    }

    private static List<List<String>> rows(Optional<Likeness> group, Snapshot library, Progress progress) {
        List<List<String>> rows = new ArrayList<>();
        for (ThingId id : group.map(Likeness::entries).orElse(List.of())) {
            if (rows.size() % BETWEEN_CHECKS == 0) {
                progress.check();
            }
            library.thing(id, Instrument.class).map(DuplicatesPanel::row).ifPresent(rows::add);
        }
        return rows;
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

    private void merge(Likeness group) {
        ThingId kept = group.entries().get(Math.max(0, entries.getSelectedRow()));
        desk.editMany(
                merge,
                "Merging instruments",
                (library, progress) -> merged(library, kept, group.entries()),
                outcome -> {
                    if (outcome instanceof Outcome.Failed<List<Fault>> failed) {
                        told.setText("Nothing was merged: " + failed.reason());
                    } else if (outcome instanceof Outcome.Current<List<Fault>> current
                            && !current.value().isEmpty()) {
                        told.setText(
                                "Nothing was merged: " + current.value().get(0).sentence());
                    } else {
                        look();
                    }
                });
    }

    private static NamedEdit merged(Snapshot library, ThingId kept, List<ThingId> all) {
        String name = library.entry(kept).map(Entry::name).orElse("");
        return new NamedEdit("Merge " + all.size() + " instruments into " + name, Merging.changes(library, kept, all));
    }
}
