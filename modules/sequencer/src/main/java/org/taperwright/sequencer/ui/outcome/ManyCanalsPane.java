package org.taperwright.sequencer.ui.outcome;

import java.awt.BorderLayout;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import org.taperwright.library.store.Arrangement;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.sequencer.outcome.PopulationLines;
import org.taperwright.sequencer.outcome.PopulationWork;
import org.taperwright.sequencer.outcome.TakenCanal;
import org.taperwright.shaping.canal.preset.CanalPreset;
import org.taperwright.shaping.canal.preset.CanalPresets;
import org.taperwright.shaping.population.PopulationShaping;
import org.taperwright.shaping.population.WorstCase;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextTable;

/** The sequence over canals drawn from a preset: how its numbers are distributed, and the canals in which they came out worst. */
final class ManyCanalsPane extends JPanel {
    private static final int USUAL = 100;
    private static final int MOST = 5000;
    private static final double NUMBERS_SHARE = 0.6;

    private final transient Desk desk;
    private final transient Object slot = new Object();
    private final ChoiceField<CanalPreset> preset =
            new ChoiceField<>("outcome.preset", "Canals drawn from", CanalPresets.all(), CanalPreset::label);
    private final QuantityField count =
            new QuantityField("outcome.canals", "How many canals", new QuantityKind("", 1, MOST, 10, 0, 0, Map.of()));
    private final JButton run = new JButton();
    private final RunLine line = new RunLine("outcome.manyState");
    private final Prose summary = new Prose(" ", Ink::text, false);
    private final Prose source = new Prose(" ", Ink::quiet, true);
    private final TextTable numbers = NumberColumns.dress(
            new TextTable(
                    "outcome.distribution",
                    "How the numbers are distributed over the canals",
                    PopulationLines.HEADINGS,
                    List.of(44, 190, 72, 72, 72, 70, 56)),
            Set.of(2, 3, 4, 6));
    private final TextTable worst = NumberColumns.dress(
            new TextTable(
                    "outcome.worst",
                    "Canals in which numbers came out worst",
                    PopulationLines.WORST_HEADINGS,
                    List.of(150, 70, 40, 70, 110)),
            Set.of(3));
    private final JButton take = new JButton();
    private final JButton takeBoth = new JButton();
    private transient Optional<Arrangement> arrangement = Optional.empty();
    private transient Optional<PopulationWork.Found> found = Optional.empty();
    private transient Optional<WatchedWork<PopulationWork.Found>> running = Optional.empty();

    ManyCanalsPane(Desk desk) {
        super(new BorderLayout(0, Spacing.NEAR));
        this.desk = desk;
        setName("outcome.many");
        setBorder(Spacing.around(Spacing.NEAR));
        count.setValue(USUAL);
        preset.setSelectedItem(
                CanalPresets.find("lower-molar-mb").orElse(CanalPresets.all().get(0)));
        CopyMenu.on(numbers, "Distribution over many canals", numbers::data);
        CopyMenu.on(worst, "Worst canals", worst::data);
        worst.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        worst.getSelectionModel().addListSelectionListener(event -> allow());
        action(run, "Run over these canals", "outcome.runMany", this::begin);
        action(take, "Take this canal", "outcome.takeCanal", () -> take(false));
        action(takeBoth, "Take it with the sequence", "outcome.takeBoth", () -> take(true));
        take.setToolTipText("Puts this canal into the library, so that it can be looked at");
        takeBoth.setToolTipText("Also puts a copy of the sequence in it, each step as far from the end as it was run");
        add(controls(), BorderLayout.NORTH);
        add(results(), BorderLayout.CENTER);
        allow();
    }

    private static void action(JButton button, String words, String name, Runnable does) {
        button.setAction(new AbstractAction(words) {
            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
        button.setName(name);
    }

    private JPanel controls() {
        JPanel row = new JPanel(new ShrinkingRow(Spacing.NEAR));
        row.setOpaque(false);
        JLabel from = new JLabel("Canals drawn from");
        from.setLabelFor(preset);
        JLabel many = new JLabel("how many");
        many.setLabelFor(count.entry());
        row.add(from);
        row.add(preset);
        row.add(many);
        row.add(count);
        row.add(run);
        row.add(line);
        return row;
    }

    private JPanel results() {
        JPanel buttons = new JPanel(new ShrinkingRow(Spacing.NEAR));
        buttons.setOpaque(false);
        buttons.add(take);
        buttons.add(takeBoth);
        JPanel right = new JPanel(new BorderLayout(0, Spacing.TIGHT));
        right.setOpaque(false);
        right.add(worst.scrolled(), BorderLayout.CENTER);
        right.add(buttons, BorderLayout.SOUTH);
        ShareSplit split = new ShareSplit(
                "outcome.manySplit", ShareSplit.HORIZONTAL_SPLIT, numbers.scrolled(), right, NUMBERS_SHARE);
        summary.setName("outcome.manySummary");
        source.setName("outcome.manySource");
        summary.setText("Runs the steps in canals that differ as teeth do, each step as far from the end as here.");
        JPanel all = new JPanel(new BorderLayout(0, Spacing.TIGHT));
        all.setOpaque(false);
        all.add(summary, BorderLayout.NORTH);
        all.add(split, BorderLayout.CENTER);
        all.add(source, BorderLayout.SOUTH);
        return all;
    }

    /** Follows the sequence; numbers of another one go, those of an earlier state of the same stay, marked as outdated. */
    void show(Optional<Arrangement> now, boolean another) {
        arrangement = now;
        if (another) {
            stop();
            found = Optional.empty();
            numbers.show(List.of());
            worst.show(List.of());
            line.say("");
            source.setText(" ");
            summary.setText("Runs the steps in canals that differ as teeth do, each step as far from the end as here.");
        }
        boolean outdated = outdated();
        numbers.setEnabled(!outdated);
        worst.setEnabled(!outdated);
        if (outdated) {
            line.warn("Outdated: the sequence has changed since");
        }
        allow();
    }

    private boolean outdated() {
        return found.filter(
                        result -> !arrangement.equals(Optional.of(result.input().arrangement())))
                .isPresent();
    }

    private void allow() {
        run.setEnabled(arrangement.filter(now -> now.arranged().isPresent()).isPresent());
        boolean chosen = worst.getSelectedRow() >= 0 && found.isPresent();
        take.setEnabled(chosen);
        takeBoth.setEnabled(chosen);
    }

    /** The state it follows. */
    Optional<Arrangement> following() {
        return arrangement;
    }

    private void stop() {
        running.ifPresent(WatchedWork::stop);
    }

    private void begin() {
        if (arrangement.isEmpty() || preset.getSelectedIndex() < 0) {
            return;
        }
        PopulationWork work = new PopulationWork(
                arrangement.get(), preset.getItemAt(preset.getSelectedIndex()), (int) Math.round(count.value()));
        stop();
        WatchedWork<PopulationWork.Found> watched =
                new WatchedWork<>(work, (fraction, what) -> line.running(fraction, what, this::stop));
        running = Optional.of(watched);
        line.running(0, "beginning", this::stop);
        desk.<PopulationWork.Found>compute(
                slot, "Running over " + work.canals() + " canals", watched, outcome -> deliver(watched, outcome));
    }

    private void deliver(WatchedWork<PopulationWork.Found> watched, Outcome<PopulationWork.Found> outcome) {
        if (!running.equals(Optional.of(watched))) {
            return;
        }
        running = Optional.empty();
        if (outcome instanceof Outcome.Current<PopulationWork.Found> current) {
            found = Optional.of(current.value());
            show(current.value());
        } else if (outcome instanceof Outcome.Failed<PopulationWork.Found> failed) {
            line.warn(failed.reason());
        } else {
            line.warn("Stopped");
        }
    }

    private void show(PopulationWork.Found result) {
        Optional<PopulationShaping> population = result.population();
        List<Integer> places = result.input().arrangement().complete();
        numbers.show(population
                .map(ran -> PopulationLines.distributions(ran, places))
                .orElse(List.of()));
        worst.show(population.map(ran -> PopulationLines.worst(ran, places)).orElse(List.of()));
        summary.setText(population
                .map(ran -> result.input().canals() + " canals drawn from "
                        + result.input().preset().label() + ". "
                        + PopulationLines.notMade(ran, places)
                        + " Spread of the canals alone, at the usual constants.")
                .orElse("There is no step, or no canal from which depths could be measured."));
        source.setText(result.input().preset().source() + " Spreads that these do not give are assumed.");
        line.say("");
        show(arrangement, false);
    }

    private void take(boolean withSequence) {
        int row = worst.getSelectedRow();
        Optional<PopulationShaping> population = found.flatMap(PopulationWork.Found::population);
        if (row < 0 || population.isEmpty()) {
            return;
        }
        WorstCase chosen = population.get().worst().get(row);
        TakenCanal.Edit edit = withSequence
                ? TakenCanal.withSequence(
                        chosen.canal(),
                        found.orElseThrow().input().arrangement().arranged().orElseThrow())
                : TakenCanal.alone(chosen.canal());
        List<Fault> faults = desk.tryEdit(edit.name(), edit.changes());
        if (faults.isEmpty()) {
            line.say("Taken: " + chosen.canal().name());
            desk.open(edit.open());
        } else {
            line.warn(faults.get(0).sentence());
        }
    }
}
