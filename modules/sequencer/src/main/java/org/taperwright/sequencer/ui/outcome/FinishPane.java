package org.taperwright.sequencer.ui.outcome;

import java.awt.BorderLayout;
import java.awt.GridLayout;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.sequencer.outcome.FinishLines;
import org.taperwright.sequencer.outcome.Shaped;
import org.taperwright.shaping.finish.Finish;
import org.taperwright.shaping.finish.StiffNeedle;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.Heading;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextTable;

/** Whether the canal can then be cleaned and packed: how deep needles reach, its volume, which cones fit. */
final class FinishPane extends JPanel {
    private static final List<Integer> NEEDLE_WIDTHS = List.of(56, 64, 104, 104, 96, 120);
    private static final List<Integer> CONE_WIDTHS = List.of(64, 96, 80, 72, 72, 112, 128);

    private final TextTable needles = NumberColumns.dress(
            new TextTable("outcome.needles", "How deep needles reach", FinishLines.NEEDLE_HEADINGS, NEEDLE_WIDTHS),
            Set.of(1, 2, 3, 4));
    private final TextTable cones = NumberColumns.dress(
            new TextTable("outcome.cones", "Which cones fit", FinishLines.CONE_HEADINGS, CONE_WIDTHS),
            Set.of(1, 2, 3, 4, 5, 6));
    private final Prose volume = new Prose(" ", Ink::text, false);
    private final Prose none = new Prose(" ", Ink::quiet, true);

    FinishPane() {
        super(new BorderLayout(0, Spacing.NEAR));
        setName("outcome.finish");
        setBorder(Spacing.around(Spacing.NEAR));
        volume.setName("outcome.volume");
        none.setName("outcome.cones.note");
        CopyMenu.on(needles, "How deep needles reach", needles::data);
        CopyMenu.on(cones, "Which cones fit", cones::data);
        JPanel tables = new JPanel(new GridLayout(1, 2, Spacing.APART, 0));
        tables.setOpaque(false);
        tables.add(part(
                "Cleaning: needles",
                needles.scrolled(),
                new Prose(
                        "Depths from the orifice. Flexible: to where its circle fits. Steel: at most "
                                + Shown.number(StiffNeedle.Assumed.USUAL.forceN()) + " N of push and a strain of "
                                + Shown.percent(StiffNeedle.Assumed.USUAL.strain())
                                + ", both assumed. Diameters: the widest of ISO 9626, from memory.",
                        Ink::quiet,
                        true)));
        tables.add(part("Packing: cones", cones.scrolled(), none));
        add(volume, BorderLayout.NORTH);
        add(tables, BorderLayout.CENTER);
    }

    private static JPanel part(String title, JComponent table, Prose note) {
        JPanel part = new JPanel(new BorderLayout(0, Spacing.TIGHT));
        part.setOpaque(false);
        part.add(new Heading(title), BorderLayout.NORTH);
        part.add(table, BorderLayout.CENTER);
        part.add(note, BorderLayout.SOUTH);
        return part;
    }

    /** Shows a result, with the band of the volume once it is there. */
    void show(Optional<Shaped> shaped, String volumeBand, boolean outdated) {
        Optional<Finish> finish = shaped.flatMap(Shaped::run).map(Shaped.Run::finish);
        needles.show(finish.map(FinishLines::needles).orElse(List.of()));
        cones.show(finish.map(FinishLines::cones).orElse(List.of()));
        needles.setEnabled(!outdated);
        cones.setEnabled(!outdated);
        volume.setText(finish.map(found -> volume(found, volumeBand)).orElse("Nothing computed yet."));
        none.setText(finish.filter(found -> found.cones().isEmpty())
                .map(found -> "No cone of size 15 or more comes near the depth of the last step.")
                .orElse("For each taper the widest cone that as named stops at most " + Shown.number(Finish.THERE_MM)
                        + " mm short of the last step's depth. Tolerances of ISO 6877, from memory."));
    }

    private static String volume(Finish finish, String band) {
        return "Canal volume down to the last step's depth, " + Shown.mm(finish.endMm()) + " below the orifice: "
                + Shown.number(finish.beforeMm3()) + " mm³ before, " + Shown.number(finish.afterMm3())
                + " mm³ after (computed, from the wear assumed)"
                + (band.isEmpty() ? "." : "; whole canal after, 5 to 95 %: " + band + ".");
    }
}
