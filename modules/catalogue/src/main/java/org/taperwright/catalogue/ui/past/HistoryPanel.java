package org.taperwright.catalogue.ui.past;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import org.taperwright.library.exchange.FieldChange;
import org.taperwright.library.history.PastRevision;
import org.taperwright.library.store.Content;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Revision;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.PanelDialog;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextTable;

/**
 * A thing's past: each step with when, who and which edit. One step selected shows what it changed; two show what differs
 * between them. One can be brought back.
 */
public final class HistoryPanel extends JPanel {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");

    private final transient Desk desk;
    private final transient ThingId id;
    private final TextTable steps = new TextTable(
            "history.steps",
            "Steps of its past",
            List.of("Step", "When", "Who", "Edit", "Changed"),
            List.of(50, 140, 110, 280, 80));
    private final TextTable fields = new TextTable(
            "history.fields", "What differs", List.of("Field", "Before", "After"), List.of(160, 240, 240));
    private final Prose told = new Prose("Reading the past…", Ink::text, false);
    private final JButton back = new JButton("Bring this one back");
    private transient List<PastRevision> past = List.of();

    /** Makes the panel for a thing. */
    public HistoryPanel(Desk desk, ThingId id) {
        super(new BorderLayout(0, Spacing.NEAR));
        this.desk = desk;
        this.id = id;
        setName("historyPanel");
        told.setName("history.told");
        steps.getSelectionModel().addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting()) {
                showFields();
            }
        });
        back.setName("history.back");
        back.setToolTipText("Makes the thing as it was at the step selected; an edit that undo takes back");
        back.addActionListener(event -> bringBack());
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, steps.scrolled(), fields.scrolled());
        split.setResizeWeight(0.55);
        split.setBorder(javax.swing.BorderFactory.createEmptyBorder());
        JPanel buttons = new JPanel(new ShrinkingRow(Spacing.NEAR));
        buttons.add(back);
        add(told, BorderLayout.NORTH);
        add(split, BorderLayout.CENTER);
        add(buttons, BorderLayout.SOUTH);
        setPreferredSize(new Dimension(760, 440));
        read();
    }

    /** Shows the panel in a dialog. */
    public void show(Component over) {
        JButton close = new JButton("Close");
        close.setName("history.close");
        String name = desk.snapshot().entry(id).map(Entry::name).orElse("a thing");
        PanelDialog dialog = new PanelDialog(over, "historyDialog", "History of " + name, this, List.of(close));
        dialog.closing(close);
        dialog.show();
    }

    private void read() {
        desk.compute(this, "Reading the past", progress -> desk.past(id), outcome -> {
            if (outcome instanceof Outcome.Current<List<PastRevision>> current) {
                show(current.value());
            } else if (outcome instanceof Outcome.Failed<List<PastRevision>> failed) {
                told.setText("The past cannot be read: " + failed.reason());
            }
        });
    }

    /** Newest first. */
    private void show(List<PastRevision> read) {
        List<PastRevision> newestFirst = new ArrayList<>(read);
        java.util.Collections.reverse(newestFirst);
        past = List.copyOf(newestFirst);
        steps.show(past.stream().map(HistoryPanel::row).toList());
        told.setText(
                past.isEmpty()
                        ? "Nothing of its past is kept yet."
                        : "Select a step to see what it changed, or two to see what differs between them.");
        if (!past.isEmpty()) {
            steps.setRowSelectionInterval(0, 0);
        }
        showFields();
    }

    private static List<String> row(PastRevision step) {
        Revision revision = step.revision();
        String what = revision.content() instanceof Content.TakenOut
                ? "taken out"
                : step.changes().isEmpty() ? "made" : counted(step.changes().size());
        return List.of(
                Long.toString(revision.revision()),
                WHEN.format(revision.at().atZone(ZoneId.systemDefault())),
                revision.who(),
                revision.edit(),
                what);
    }

    private static String counted(int fields) {
        return fields == 1 ? "1 field" : fields + " fields";
    }

    private void showFields() {
        int[] chosen = steps.getSelectedRows();
        List<FieldChange> changes = List.of();
        if (chosen.length == 2) {
            changes = PastRevision.between(
                    past.get(chosen[1]).revision(), past.get(chosen[0]).revision());
        } else if (chosen.length == 1) {
            changes = past.get(chosen[0]).changes();
        }
        fields.show(changes.stream()
                .map(change -> List.of(
                        change.field(),
                        change.before().orElse("left out"),
                        change.after().orElse("left out")))
                .toList());
        back.setEnabled(chosen.length == 1 && differs(past.get(chosen[0]).revision()));
    }

    private boolean differs(Revision revision) {
        Optional<Record> now = desk.snapshot().entry(id).map(Entry::thing);
        Optional<Record> then =
                revision.content() instanceof Content.Present present ? Optional.of(present.thing()) : Optional.empty();
        return !now.equals(then) && !(revision.content() instanceof Content.Unreadable);
    }

    private void bringBack() {
        List<Fault> faults = desk.bringBack(past.get(steps.getSelectedRow()).revision());
        if (faults.isEmpty()) {
            read();
        } else {
            told.setText(
                    "Not brought back: " + faults.stream().map(Fault::sentence).collect(Collectors.joining("; ")));
        }
    }
}
