package org.taperwright.sequencer.ui.outcome;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.sequencer.outcome.Shaped;
import org.taperwright.sequencer.outcome.Unknown;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.shaping.passage.spread.UncertainInput;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextTable;

/** What it is that is not known: the constant that each main number follows most closely, and what is known of the constants. */
final class UnknownsPane extends JPanel {
    private static final List<String> HEADINGS =
            List.of("Number", "Standing", "Value", "5 to 95 %", "Follows most closely", "Rank correlation");
    private static final List<String> CONSTANTS = List.of("Constant", "5 to 95 %", "Unit", "How it is known");

    private static final double NUMBERS_SHARE = 0.68;

    private final TextTable numbers = NumberColumns.dress(
            new TextTable("outcome.unknowns", "What each number follows", HEADINGS, List.of(200, 70, 64, 110, 220, 80)),
            Set.of(2, 5));
    private final TextTable constants = NumberColumns.dress(
            new TextTable(
                    "outcome.constants", "The constants that are not known", CONSTANTS, List.of(220, 120, 56, 260)),
            Set.of());
    private final Prose note = new Prose(" ", Ink::quiet, true);

    UnknownsPane() {
        super(new BorderLayout(0, Spacing.NEAR));
        setName("outcome.unknown");
        setBorder(Spacing.around(Spacing.NEAR));
        note.setName("outcome.unknown.note");
        CopyMenu.on(numbers, "What each number follows", numbers::data);
        CopyMenu.on(constants, "The constants that are not known", constants::data);
        ShareSplit tables = new ShareSplit(
                "outcome.unknownSplit",
                ShareSplit.HORIZONTAL_SPLIT,
                numbers.scrolled(),
                constants.scrolled(),
                NUMBERS_SHARE);
        JButton limits = new JButton(new AbstractAction("What is left out…") {
            @Override
            public void actionPerformed(ActionEvent event) {
                LimitsPane.show(UnknownsPane.this);
            }
        });
        limits.setName("outcome.limits.open");
        limits.setToolTipText("What shaping neglects, how large that is, and where a result says little");
        JPanel below = new JPanel(new BorderLayout(Spacing.APART, 0));
        below.setOpaque(false);
        JPanel button = new JPanel(new FlowLayout(FlowLayout.TRAILING, 0, 0));
        button.setOpaque(false);
        button.add(limits);
        below.add(note, BorderLayout.CENTER);
        below.add(button, BorderLayout.EAST);
        add(tables, BorderLayout.CENTER);
        add(below, BorderLayout.SOUTH);
    }

    /** Shows the bands of a result, or that they are not there. */
    void show(Optional<Shaped> shaped, Optional<ShapingBands> bands, boolean outdated) {
        boolean there = shaped.isPresent() && bands.filter(ShapingBands::whole).isPresent();
        numbers.show(
                there
                        ? Unknown.of(shaped.get(), bands.get()).stream()
                                .map(Unknown::line)
                                .toList()
                        : List.of());
        constants.show(bands.filter(ShapingBands::whole)
                .map(found ->
                        found.inputs().stream().map(UnknownsPane::constant).toList())
                .orElse(List.of()));
        numbers.setEnabled(!outdated);
        constants.setEnabled(!outdated);
        note.setText(
                there
                        ? "Of 200 samples in which all constants vary at once. A rank correlation runs from -1 to 1; below "
                                + String.format(Locale.ROOT, "%.2f", ShapingBands.CHANCE)
                                + " it cannot be told from chance. The spreads of most constants are themselves assumed."
                        : "Stands here once all samples are computed.");
    }

    private static List<String> constant(UncertainInput input) {
        return List.of(
                input.label(),
                Shown.number(input.low()) + " to " + Shown.number(input.high()),
                input.unit().isEmpty() ? "–" : input.unit(),
                input.source());
    }
}
