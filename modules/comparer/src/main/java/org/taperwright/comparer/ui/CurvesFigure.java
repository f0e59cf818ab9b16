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
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import org.taperwright.library.exchange.bench.BenchTable;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.mechanics.measured.BenchCurve;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/** The curves of bending, twisting and turning in a curve, measurements laid over them, and the fit of an alloy to those. */
final class CurvesFigure extends JPanel {
    private static final List<String> TESTS = List.of("Bending", "Twisting", "Turning in a curve");

    private final transient Desk desk;
    private final CardLayout cards = new CardLayout();
    private final JPanel figures = new JPanel(cards);
    private final BenchFigure bending = new BenchFigure(BenchCurve.BENDING);
    private final BenchFigure twisting = new BenchFigure(BenchCurve.TWISTING);
    private final LivesFigure lives = new LivesFigure();
    private final Prose said = new Prose("", Ink::unusual, true);
    private final List<MeasuredOn> measured = new ArrayList<>();
    private final ChoiceField<Member> on = new ChoiceField<>(
            "comparison.measured.on", "Design the measurements were made on", List.of(), Member::name);
    private transient Optional<Compared> compared = Optional.empty();
    private transient List<SeriesLook> looks = List.of();

    CurvesFigure(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
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
        JButton clear = button("comparison.measured.clear", "Clear", () -> {
            measured.clear();
            said.setText("");
            draw();
        });
        clear.setToolTipText("Takes all measurements off the plots");
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
        row.add(clear);
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
    void show(Compared newCompared, List<SeriesLook> newLooks) {
        compared = Optional.of(newCompared);
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
            return MeasurementFile.read(Files.readAllBytes(file), String.valueOf(file.getFileName()));
        } catch (IOException unreadable) {
            throw new UncheckedIOException("cannot read " + file + ": " + unreadable.getMessage(), unreadable);
        }
    }

    private void take(Member member, Outcome<BenchTable> outcome) {
        if (outcome instanceof Outcome.Current<BenchTable> current) {
            if (current.value() instanceof BenchTable.Read read) {
                measured.add(new MeasuredOn(member.id(), read.measured()));
                said.setText(read.remarks().isEmpty() ? "" : "Passed over: " + words(read.remarks()));
                draw();
            } else {
                said.setText(words(((BenchTable.Refused) current.value()).faults()));
            }
        } else if (outcome instanceof Outcome.Failed<BenchTable> failed) {
            said.setText(failed.reason());
        }
        revalidate();
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
            JOptionPane.showMessageDialog(this, pane, "Fit an alloy to measurements", JOptionPane.PLAIN_MESSAGE);
        });
    }
}
