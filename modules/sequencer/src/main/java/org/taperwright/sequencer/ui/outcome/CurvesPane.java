package org.taperwright.sequencer.ui.outcome;

import java.awt.CardLayout;
import java.awt.GridLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import org.taperwright.sequencer.outcome.CanalCurves;
import org.taperwright.sequencer.outcome.Shaped;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.workbench.ui.EmptyState;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.XyPlot;

/** Curves along the canal for the selected step. */
final class CurvesPane extends JPanel {
    private static final String PLOTS = "plots";
    private static final String NONE = "none";

    private final CardLayout cards = new CardLayout();
    private final XyPlot contact = new XyPlot("outcome.contact", "Contact forces along the canal");
    private final XyPlot gap = new XyPlot("outcome.gap", "Room beside the instrument");
    private final XyPlot strain = new XyPlot("outcome.strain", "Strain of the blade along the canal");
    private final XyPlot removed = new XyPlot("outcome.removed", "Depth worn in the step");
    private final XyPlot plane = new XyPlot("outcome.plane", "Canal before and after, in the bend's plane");
    private final XyPlot across = new XyPlot("outcome.across", "Canal before and after, across the bend's plane");
    private transient Optional<StepOutcome> shown = Optional.empty();

    CurvesPane() {
        setLayout(cards);
        setName("outcome.curves");
        JPanel grid = new JPanel(new GridLayout(2, 3, Spacing.NEAR, Spacing.TIGHT));
        grid.setBorder(Spacing.around(Spacing.TIGHT, Spacing.NEAR));
        all().forEach(grid::add);
        add(grid, PLOTS);
        add(
                new EmptyState(
                        "outcome.noCurves",
                        "No curves for this step",
                        "Select a step that was made: its contact with the wall, its strain and what it wore are drawn here.",
                        List.of()),
                NONE);
        cards.show(this, NONE);
    }

    private List<XyPlot> all() {
        return List.of(contact, gap, plane, strain, removed, across);
    }

    /** Shows a step of a result. */
    void show(Optional<Shaped> shaped, int selected, boolean outdated) {
        Optional<StepOutcome> step = shaped.flatMap(result -> result.step(selected));
        cards.show(this, step.isPresent() ? PLOTS : NONE);
        if (step.isPresent() && !step.equals(shown)) {
            CanalCurves curves = new CanalCurves(
                    shaped.orElseThrow().arrangement().canal().orElseThrow(),
                    step.get(),
                    shaped.orElseThrow().stepBefore(selected).map(StepOutcome::wall));
            contact.setPlot(curves.contact());
            gap.setPlot(curves.gap());
            strain.setPlot(curves.strain());
            removed.setPlot(curves.removed());
            plane.setPlot(curves.inPlane());
            across.setPlot(curves.acrossPlane());
        }
        shown = step;
        String remark = outdated ? "outdated" : "";
        all().forEach(plot -> plot.setRemark(remark));
        if (!outdated && step.isPresent() && contact.plot().curves().size() == 1) {
            contact.setRemark("leans nowhere on the wall");
        }
    }
}
