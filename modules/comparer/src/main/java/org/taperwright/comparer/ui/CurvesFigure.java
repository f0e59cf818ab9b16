package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import org.taperwright.library.exchange.bench.BenchTable;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.MeasuredOn;
import org.taperwright.mechanics.measured.BenchCurve;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/** The curves of bending, twisting and turning in a curve, measurements laid over them, and the fit of an alloy to those. */
final class CurvesFigure extends JPanel {
    private static final int LONGEST_LABEL = 120;
    private static final List<String> TESTS = List.of("Bending", "Twisting", "Turning in a curve");

    private final transient Desk desk;
    private final CardLayout cards = new CardLayout();
    private final JPanel figures = new JPanel(cards);
    private final BenchFigure bending = new BenchFigure(BenchCurve.BENDING);
    private final BenchFigure twisting = new BenchFigure(BenchCurve.TWISTING);
    private final LivesFigure lives;
    private final Prose said = new Prose("", Ink::unusual, true);
    private final transient BiFunction<String, List<MeasuredOn>, List<Fault>> measure;
    private final JButton takeOut = button("comparison.measured.takeOut", "Take out…", this::offerToTakeOut);
    private transient List<MeasuredOn> measured = List.of();
    private final ChoiceField<Member> on = new ChoiceField<>(
            "comparison.measured.on", "Design the measurements were made on", List.of(), Member::name);
    private transient Optional<Compared> compared = Optional.empty();
    private transient List<SeriesLook> looks = List.of();

    /**
     * @param measure receives the name of an edit and the measurements after it; gives why it was not made, nothing when it was
     */
    CurvesFigure(Desk desk, BiFunction<String, List<MeasuredOn>, List<Fault>> measure) {
        super(new BorderLayout());
        this.desk = desk;
        this.measure = measure;
        lives = new LivesFigure(desk);
        setName("comparison.curves");
        setOpaque(false);
        figures.setOpaque(false);
        figures.add(bending, TESTS.get(0));
        figures.add(twisting, TESTS.get(1));
        figures.add(lives, TESTS.get(2));
        ChoiceField<String> test = new ChoiceField<>("comparison.curves.test", "Test", TESTS, words -> words);
        test.setValue(TESTS.get(0));
        test.onCommit(chosen -> cards.show(figures, chosen));
        JButton add = button("comparison.measured.add", "Add measurements…", this::ask);
        add.setToolTipText(
                "<html>A table (CSV) with headings: angle with torque or moment,<br>or radius, angle and cycles of tubes");
        takeOut.setToolTipText("Takes measurements out of this comparison; undo brings them back");
        JButton fit = button("comparison.fit.open", "Fit alloy…", this::fit);
        fit.setToolTipText("Fits constants of a design's alloy to the measurements; gives a new alloy");
        on.setPreferredSize(new Dimension(130, on.getPreferredSize().height));
        JPanel row = new JPanel(new WrappingRow(Spacing.NEAR));
        row.setOpaque(false);
        row.setBorder(Spacing.around(Spacing.NEAR, Spacing.NEAR));
        row.add(test);
        row.add(on);
        row.add(add);
        row.add(fit);
        row.add(takeOut);
        said.setName("comparison.measured.said");
        said.setBorder(Spacing.around(Spacing.TIGHT, Spacing.NEAR));
        add(row, BorderLayout.NORTH);
        add(figures, BorderLayout.CENTER);
        add(said, BorderLayout.SOUTH);
    }

    private static JButton button(String name, String words, Runnable action) {
        JButton button = new JButton(words);
        button.setName(name);
        button.addActionListener(event -> action.run());
        return button;
    }

    /** Shows a result. */
    void show(Compared newCompared, List<SeriesLook> newLooks, List<MeasuredOn> newMeasured) {
        compared = Optional.of(newCompared);
        measured = List.copyOf(newMeasured);
        takeOut.setEnabled(!measured.isEmpty());
        looks = List.copyOf(newLooks);
        Optional<Member> before = Optional.ofNullable((Member) on.getSelectedItem());
        on.setChoices(newCompared.members());
        newCompared.members().stream()
                .filter(member ->
                        before.isPresent() && member.id().equals(before.get().id()))
                .findFirst()
                .or(() -> newCompared.members().stream().findFirst())
                .ifPresent(on::setValue);
        draw();
    }

    void setRemark(String words) {
        bending.setRemark(words);
        twisting.setRemark(words);
        lives.setRemark(words);
    }

    private void draw() {
        compared.ifPresent(shown -> {
            bending.show(shown, looks, measured);
            twisting.show(shown, looks, measured);
            lives.show(shown, looks, measured);
        });
    }

    private void ask() {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Measurements as a table (CSV)");
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            read(chooser.getSelectedFile().toPath());
        }
    }

    /** Reads a table in the background and lays it over the plots. */
    void read(Path file) {
        if (!(on.getSelectedItem() instanceof Member member)) {
            return;
        }
        desk.compute(said, "Reading " + file.getFileName(), progress -> table(file), outcome -> take(member, outcome));
    }

    private static BenchTable table(Path file) {
        try {
            return MeasurementFile.read(Files.readAllBytes(file), label(file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException("cannot read " + file + ": " + unreadable.getMessage(), unreadable);
        }
    }

    /** Of the file's name as much as is kept. */
    private static String label(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.length() <= LONGEST_LABEL ? name : name.substring(0, LONGEST_LABEL - 1) + "…";
    }

    private void take(Member member, Outcome<BenchTable> outcome) {
        if (outcome instanceof Outcome.Current<BenchTable> current) {
            if (current.value() instanceof BenchTable.Read read) {
                List<MeasuredOn> more = new ArrayList<>(measured);
                more.add(new MeasuredOn(member.id(), read.measured()));
                List<Fault> faults =
                        measure.apply("Measurements " + read.measured().label(), more);
                said.setText(
                        !faults.isEmpty()
                                ? faults.stream().map(Fault::sentence).collect(Collectors.joining("\n"))
                                : read.remarks().isEmpty() ? "" : "Passed over: " + words(read.remarks()));
            } else {
                said.setText(words(((BenchTable.Refused) current.value()).faults()));
            }
        } else if (outcome instanceof Outcome.Failed<BenchTable> failed) {
            said.setText(failed.reason());
        }
        revalidate();
    }

    private void offerToTakeOut() {
        JPopupMenu menu = new JPopupMenu();
        for (MeasuredOn each : measured) {
            String on = desk.snapshot().entry(each.design()).map(Entry::name).orElse("a design no longer there");
            JMenuItem item = new JMenuItem(each.measured().label() + ", on " + on);
            item.addActionListener(event -> leave(
                    "Take out measurements " + each.measured().label(),
                    measured.stream().filter(other -> other != each).toList()));
            menu.add(item);
        }
        if (measured.size() > 1) {
            JMenuItem all = new JMenuItem("All");
            all.addActionListener(event -> leave("Take out all measurements", List.of()));
            menu.addSeparator();
            menu.add(all);
        }
        menu.show(takeOut, 0, takeOut.getHeight());
    }

    private void leave(String name, List<MeasuredOn> rest) {
        said.setText("");
        measure.apply(name, rest);
    }

    private static String words(List<PlacedFault> faults) {
        String few = faults.stream()
                .limit(5)
                .map(each -> "line " + each.place().line() + ", column "
                        + each.place().column() + ": " + each.fault().sentence())
                .collect(Collectors.joining("\n"));
        return faults.size() > 5 ? few + "\nand " + (faults.size() - 5) + " more" : few;
    }

    private void fit() {
        compared.ifPresent(shown -> {
            FitPane pane = new FitPane(desk, shown, measured);
            JOptionPane.showOptionDialog(
                    this,
                    pane,
                    "Fit an alloy to measurements",
                    JOptionPane.DEFAULT_OPTION,
                    JOptionPane.PLAIN_MESSAGE,
                    null,
                    new Object[] {"Close"},
                    "Close");
        });
    }
}
