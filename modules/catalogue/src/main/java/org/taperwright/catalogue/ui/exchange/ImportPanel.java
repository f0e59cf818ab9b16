package org.taperwright.catalogue.ui.exchange;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.prefs.Preferences;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.transfer.ImportPlan;
import org.taperwright.library.exchange.transfer.PlannedThing;
import org.taperwright.library.exchange.transfer.Resolution;
import org.taperwright.library.exchange.transfer.Standing;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.NamedEdit;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.PanelDialog;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextTable;

/**
 * Brings a table or a bundle in: how it is read, what its columns mean, which lines cannot be read and why, what of it is
 * new, the same or changed; and only then one edit with all that can come in.
 */
public final class ImportPanel extends JPanel {
    private final transient Desk desk;
    private final transient KeptMappings kept;
    private final ReadingBar reading;
    private final MappingTable mapping = new MappingTable();
    private final TextTable rejected = new TextTable(
            "import.rejected", "Lines that cannot be read", List.of("Line", "Column", "Reason"), List.of(60, 60, 800));
    private final PlanTable things = new PlanTable();
    private final JTabbedPane tabs = new JTabbedPane();
    private final JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT);
    private final JScrollPane mappingScroll = new JScrollPane(mapping);
    private final Prose told = new Prose("Choose a table (CSV) or a bundle (JSON).", Ink::text, false);
    private final JButton take = new JButton("Import");
    private final JButton save = new JButton("Save rejected rows…");
    private final JButton ours = new JButton("Keep the library's for all");
    private final JButton theirs = new JButton("Take the file's for all");
    private transient Optional<IncomingView> view = Optional.empty();
    private transient UnaryOperator<ImportPlan> choices = UnaryOperator.identity();
    private transient Runnable done = () -> {};

    /**
     * Makes the panel on a desk.
     *
     * @param settings where the mappings used last are remembered
     */
    public ImportPanel(Desk desk, Preferences settings) {
        super(new BorderLayout(0, Spacing.NEAR));
        this.desk = desk;
        kept = new KeptMappings(settings);
        reading = new ReadingBar(this::choose, this::open, this::look);
        setName("importPanel");
        told.setName("import.told");
        take.setName("import.take");
        save.setName("import.save");
        ours.setName("import.ours");
        theirs.setName("import.theirs");
        mapping.onChange(
                changed -> view.flatMap(IncomingView::format)
                        .ifPresent(format -> look(view.orElseThrow().incoming().mapped(format, changed))),
                this::say);
        things.onChoice((id, choice) -> choose(plan -> plan.with(id, choice)));
        take.addActionListener(event -> take());
        save.addActionListener(event -> saveRejected());
        ours.addActionListener(event -> choose(plan -> plan.withAll(Resolution.OURS)));
        theirs.addActionListener(event -> choose(plan -> plan.withAll(Resolution.THEIRS)));
        tabs.setName("import.tabs");
        tabs.addTab("Comes in", scroll(things));
        tabs.addTab("Cannot be read", rejected.scrolled());
        mappingScroll.setColumnHeaderView(mapping.getTableHeader());
        split.setTopComponent(mappingScroll);
        split.setBottomComponent(tabs);
        split.setResizeWeight(0.4);
        split.setBorder(javax.swing.BorderFactory.createEmptyBorder());
        JPanel buttons = new JPanel(new ShrinkingRow(Spacing.NEAR));
        List.of(take, save, ours, theirs).forEach(buttons::add);
        JPanel below = new JPanel(new BorderLayout(0, Spacing.NEAR));
        below.add(told, BorderLayout.NORTH);
        below.add(buttons, BorderLayout.CENTER);
        add(reading, BorderLayout.NORTH);
        add(split, BorderLayout.CENTER);
        add(below, BorderLayout.SOUTH);
        setPreferredSize(new Dimension(940, 560));
        wake();
    }

    private static JScrollPane scroll(JTable table) {
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        return scroll;
    }

    /** Shows the panel in a dialog. */
    public void show(Component over) {
        JButton close = new JButton("Close");
        close.setName("import.close");
        PanelDialog dialog = new PanelDialog(over, "importDialog", "Import", this, List.of(close));
        dialog.closing(close);
        done = dialog::close;
        dialog.show();
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser();
        chooser.setName("import.chooser");
        chooser.setDialogTitle("Table (CSV) or bundle (JSON)");
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            open(chooser.getSelectedFile().toPath());
        }
    }

    private void open(String typed) {
        try {
            open(Path.of(typed));
        } catch (InvalidPathException strange) {
            say("“" + typed + "” is no name of a file");
        }
    }

    /** Looks at a file. */
    public void open(Path file) {
        if (Files.isRegularFile(file)) {
            look(Incoming.of(file, reading.kind()));
        } else {
            say(file + " is no file");
        }
    }

    private void look(Incoming incoming) {
        say("Looking through " + incoming.file().getFileName() + "…");
        choices = UnaryOperator.identity();
        desk.compute(this, "Looking through the file", new Looking(incoming, kept.read(), desk.snapshot()), outcome -> {
            if (outcome instanceof Outcome.Current<IncomingView> current) {
                show(current.value());
            } else if (outcome instanceof Outcome.Failed<IncomingView> failed) {
                say(failed.reason());
            } else {
                say("Stopped.");
            }
        });
    }

    private void show(IncomingView now) {
        view = Optional.of(now);
        reading.show(now);
        mappingScroll.setVisible(!now.incoming().forms());
        now.mapping().ifPresentOrElse(each -> mapping.show(each, now.samples()), mapping::clear);
        List<List<String>> rows = new ArrayList<>();
        for (FileFault fault : now.rejected()) {
            rows.add(List.of(
                    Integer.toString(fault.line()),
                    Integer.toString(fault.column()),
                    fault.fault().sentence()));
        }
        rejected.show(rows);
        things.show(now);
        tabs.setTitleAt(1, rows.isEmpty() ? "Cannot be read" : "Cannot be read (" + rows.size() + ")");
        tabs.setSelectedIndex(rows.isEmpty() ? 0 : 1);
        say(words(now));
        wake();
    }

    private static String words(IncomingView now) {
        if (now.plan().isEmpty()) {
            return "Nothing can be taken from this file: "
                    + now.rejected().stream()
                            .findFirst()
                            .map(FileFault::sentence)
                            .orElse("");
        }
        ImportPlan plan = now.plan().get();
        long changed = plan.count(Standing.Changed.class) + plan.count(Standing.Other.class);
        String bad = plan.bad() == 0
                ? ""
                : plan.bad() == 1
                        ? " 1 row cannot be read and stays out."
                        : String.format(Locale.UK, " %,d rows cannot be read and stay out.", plan.bad());
        String open = plan.open().isEmpty() ? "" : " Where nothing is chosen the library's stays.";
        return String.format(
                        Locale.UK,
                        "%,d new, %,d the same, %,d changed.",
                        plan.count(Standing.New.class),
                        plan.count(Standing.Same.class),
                        changed)
                + bad
                + open;
    }

    private void say(String words) {
        told.setText(words);
    }

    private void wake() {
        Optional<ImportPlan> plan = view.flatMap(IncomingView::plan);
        take.setEnabled(plan.filter(each -> each.things().values().stream().anyMatch(PlannedThing::comesIn))
                .isPresent());
        save.setEnabled(plan.filter(each -> each.bad() > 0).isPresent()
                && view.flatMap(IncomingView::mapping).isPresent());
        boolean open = plan.filter(each -> !each.open().isEmpty()).isPresent();
        ours.setEnabled(open);
        theirs.setEnabled(open);
    }

    /** Makes a choice off the event thread, together with those made before it that do not show yet. */
    private void choose(UnaryOperator<ImportPlan> choice) {
        IncomingView chosenOf = view.orElseThrow();
        UnaryOperator<ImportPlan> earlier = choices;
        choices = plan -> choice.apply(earlier.apply(plan));
        UnaryOperator<ImportPlan> all = choices;
        desk.compute(
                this,
                "Choosing",
                progress -> chosenOf.planned(all.apply(chosenOf.plan().orElseThrow())),
                outcome -> {
                    if (outcome instanceof Outcome.Current<IncomingView> current) {
                        choices = UnaryOperator.identity();
                        show(current.value());
                    }
                });
    }

    private void take() {
        ImportPlan shown = view.flatMap(IncomingView::plan).orElseThrow();
        UnaryOperator<ImportPlan> chosen = choices;
        view.flatMap(IncomingView::mapping).ifPresent(kept::keep);
        take.setEnabled(false);
        desk.editMany(
                take,
                "Importing",
                (library, progress) -> {
                    ImportPlan plan = chosen.apply(shown);
                    return new NamedEdit(plan.editName(), plan.changes(progress));
                },
                outcome -> imported(chosen.apply(shown), outcome));
    }

    private void imported(ImportPlan plan, Outcome<List<Fault>> outcome) {
        take.setEnabled(true);
        if (outcome instanceof Outcome.Current<List<Fault>> current) {
            imported(plan, current.value());
        } else if (outcome instanceof Outcome.Failed<List<Fault>> failed) {
            say("Nothing was imported: " + failed.reason());
        } else {
            say("Stopped; nothing was imported.");
        }
    }

    private void imported(ImportPlan plan, List<Fault> faults) {
        if (!faults.isEmpty()) {
            say("Nothing was imported: " + faults.get(0).sentence());
            return;
        }
        say(plan.editName() + ": done. Undo takes it back.");
        take.setEnabled(false);
        if (plan.bad() == 0) {
            done.run();
        }
    }

    private void saveRejected() {
        IncomingView now = view.orElseThrow();
        JFileChooser chooser = new JFileChooser();
        chooser.setSelectedFile(new File("rejected-" + now.incoming().file().getFileName()));
        if (chooser.showSaveDialog(this) != JFileChooser.APPROVE_OPTION) {
            return;
        }
        Path to = chooser.getSelectedFile().toPath();
        boolean agreed = !Files.exists(to)
                || JOptionPane.showConfirmDialog(
                                this,
                                to.getFileName() + " exists. Replace it?",
                                "Replace file",
                                JOptionPane.OK_CANCEL_OPTION)
                        == JOptionPane.OK_OPTION;
        if (agreed) {
            saveRejected(to);
        }
    }

    /** Writes the rows that could not be read into a file. */
    void saveRejected(Path to) {
        IncomingView now = view.orElseThrow();
        desk.compute(
                save,
                "Writing rejected rows",
                progress -> RejectedFile.write(
                        now.incoming().file(),
                        now.format().orElseThrow(),
                        now.mapping().orElseThrow(),
                        desk.snapshot(),
                        to,
                        progress),
                outcome -> {
                    if (outcome instanceof Outcome.Current<Long> current) {
                        say(current.value() + " rows written to " + to + "; mend them there and import that file.");
                    } else if (outcome instanceof Outcome.Failed<Long> failed) {
                        say(failed.reason());
                    }
                });
    }
}
