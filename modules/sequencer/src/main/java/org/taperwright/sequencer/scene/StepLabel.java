package org.taperwright.sequencer.scene;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import org.netbeans.api.visual.widget.Scene;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SizeChip;
import org.taperwright.workbench.ui.Spacing;

/** The label of a lane: number, size with its chip, name, depth and motion. Dragged up and down to reorder. */
final class StepLabel extends SceneWidget {
    private static final int GRIP = 10;
    private static final double DOT = 2;

    private LaneContent lane;
    private SceneLayout layout;

    StepLabel(Scene scene, LaneContent lane, SceneLayout layout) {
        super(scene);
        this.lane = lane;
        this.layout = layout;
    }

    void show(LaneContent newLane, SceneLayout newLayout) {
        lane = newLane;
        layout = newLayout;
        place(0, 0, layout.left() - Spacing.TIGHT, layout.laneHeight());
        setToolTipText("Step " + (lane.index() + 1) + ": " + lane.name() + ". Drag up or down to reorder.");
    }

    /** The lane it names. */
    LaneContent lane() {
        return lane;
    }

    @Override
    void draw(Graphics2D g) {
        grip(g);
        int x = Spacing.NEAR + GRIP + Spacing.TIGHT;
        int width = area().width - x - Spacing.TIGHT;
        g.setFont(Ink.headingFont());
        FontMetrics bold = g.getFontMetrics();
        int baseline = Spacing.NEAR + bold.getAscent();
        g.setColor(Ink.text());
        String number = Integer.toString(lane.index() + 1);
        g.drawString(number, x, baseline);
        int chip = x + bold.stringWidth(number) + Spacing.NEAR;
        int words = chip;
        if (!(lane.step() instanceof Irrigation)) {
            SizeChip icon = new SizeChip(colour());
            icon.paintIcon(new javax.swing.JLabel(), g, chip, baseline - icon.getIconHeight() + 1);
            words = chip + icon.getIconWidth() + Spacing.TIGHT;
        }
        g.drawString(lane.designation(), words, baseline);
        g.setFont(Ink.smallFont());
        FontMetrics small = g.getFontMetrics();
        g.setColor(lane.gone() ? Ink.fault() : Ink.text());
        g.drawString(cut(small, lane.name(), width), x, baseline + layout.lineHeight());
        g.setColor(Ink.quiet());
        g.drawString(cut(small, lane.setting(), width), x, baseline + 2 * layout.lineHeight());
    }

    private String colour() {
        return lane.instrument()
                .flatMap(instrument -> Designation.of(instrument).colour())
                .map(SizeColour::word)
                .orElse("");
    }

    private void grip(Graphics2D g) {
        g.setColor(Ink.mix(Ink.text(), Ink.paper(), 0.6));
        for (int row = 0; row < 4; row++) {
            for (int column = 0; column < 2; column++) {
                g.fill(new Ellipse2D.Double(
                        Spacing.NEAR + column * 5.0,
                        Spacing.NEAR + 1.5 * layout.lineHeight() - 9 + row * 5.0,
                        DOT,
                        DOT));
            }
        }
    }
}
