package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import org.taperwright.library.store.Backup;
import org.taperwright.library.store.Backups;
import org.taperwright.library.store.CheckReport;
import org.taperwright.library.store.Finding;
import org.taperwright.library.store.RestoreResult;

/** A library that does not open, or one that is looked after: what a check found, how to mend it, and its good backups. */
public final class RefusalPanel extends JPanel {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    private final TextTable findings = new TextTable(
            "refusal.findings", "What the check found", List.of("Found", "Mend it by"), List.of(360, 360));
    private final TextTable list = new TextTable(
            "refusal.backups",
            "Good backups",
            List.of("Taken", "Things", "Steps of their past", "File"),
            List.of(130, 70, 130, 380));
    private final Prose told;
    private final JButton restore = new JButton("Restore the backup selected");
    private final transient Backups backups;
    private final transient Background background;
    private final transient Consumer<RestoreResult.Restored> restored;
    private transient List<Backup> good = List.of();

    /** What was looked up at the beginning. */
    private record Looked(CheckReport report, List<Backup> good) {}

    /**
     * @param reason why the library does not open
     * @param check checks it; called off the event thread
     * @param backups its backups
     * @param restored receives that one was restored
     */
    public RefusalPanel(
            String reason,
            java.util.function.Supplier<CheckReport> check,
            Backups backups,
            Background background,
            Consumer<RestoreResult.Restored> restored) {
        super(new BorderLayout(0, Spacing.NEAR));
        this.backups = backups;
        this.background = background;
        this.restored = restored;
        setName("refusalPanel");
        told = new Prose(reason, Ink::text, false);
        told.setName("refusal.told");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getSelectionModel().addListSelectionListener(event -> restore.setEnabled(list.getSelectedRow() >= 0));
        restore.setName("refusal.restore");
        restore.setToolTipText("The file that stands there now is set aside beside it, never deleted");
        restore.setEnabled(false);
        restore.addActionListener(event -> restore());
        JPanel tables = new JPanel(new java.awt.GridLayout(2, 1, 0, Spacing.NEAR));
        tables.add(findings.scrolled());
        tables.add(list.scrolled());
        JPanel buttons = new JPanel(new ShrinkingRow(Spacing.NEAR));
        buttons.add(restore);
        add(told, BorderLayout.NORTH);
        add(tables, BorderLayout.CENTER);
        add(buttons, BorderLayout.SOUTH);
        setPreferredSize(new Dimension(760, 420));
        background.run(() -> new Looked(check.get(), backups.good()), this::show);
    }

    private void show(Looked looked) {
        good = looked.good();
        findings.show(looked.report().findings().stream().map(RefusalPanel::row).toList());
        list.show(good.stream()
                .map(each -> List.of(
                        WHEN.format(each.at().atZone(ZoneId.systemDefault())),
                        Long.toString(each.things()),
                        Long.toString(each.revisions()),
                        each.file().toString()))
                .toList());
        if (!good.isEmpty()) {
            list.setRowSelectionInterval(0, 0);
        }
    }

    private static List<String> row(Finding finding) {
        return List.of(finding.fault().sentence(), finding.mend());
    }

    private void restore() {
        Backup chosen = good.get(list.getSelectedRow());
        restore.setEnabled(false);
        background.run(() -> backups.restore(chosen, Instant.now()), result -> {
            if (result instanceof RestoreResult.Restored done) {
                told.setText("Restored."
                        + done.setAside()
                                .map(aside -> " The file that stood there is now " + aside + ".")
                                .orElse(""));
                restored.accept(done);
            } else if (result instanceof RestoreResult.Refused refused) {
                told.setText("Not restored: " + refused.fault().sentence());
                restore.setEnabled(true);
            }
        });
    }
}
