package org.taperwright.sequencer.scene;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.workbench.ui.Ink;

/**
 * What tells a step that is no instrument's work from one that is: a needle is an open tube with drops before it, a file passed or
 * brought back has a dashed outline and an arrow. Colour adds nothing that the shapes do not say.
 */
final class BetweenDrawing {
    private static final float[] DASH = {5, 3};
    private static final int DROPS = 3;
    private static final double DROP = 4.5;
    private static final double DROP_STEP = 9;
    private static final double ARROW = 5;
    private static final double RETURN = 7;

    private BetweenDrawing() {}

    /** The line in which a step's silhouette is drawn. */
    static Stroke outline(LaneContent lane) {
        return lane.step() instanceof InstrumentStep
                ? new BasicStroke(1.2f)
                : new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, DASH, 0);
    }

    /** A needle with its tip at the lane's depth: walls and bore to scale, an open end, drops before it. */
    static void needle(Graphics2D g, Irrigation rinse, LaneContent lane, SceneScale scale, double axis) {
        double left = scale.left();
        double tip = scale.x(lane.depthMm());
        double outer = Math.max(1.5, rinse.needle().outerMm() / 2 * scale.acrossPixelsPerMm());
        double bore = rinse.needle().boreMm() / 2 * scale.acrossPixelsPerMm();
        g.setColor(Ink.translucent(Ink.paper(), 0.8));
        g.fill(new Rectangle2D.Double(left, axis - outer, tip - left, 2 * outer));
        g.setColor(Ink.mix(Ink.text(), Ink.paper(), 0.55));
        g.fill(new Rectangle2D.Double(left, axis - outer, tip - left, outer - bore));
        g.fill(new Rectangle2D.Double(left, axis + bore, tip - left, outer - bore));
        g.setColor(Ink.text());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(new Line2D.Double(left, axis - outer, tip, axis - outer));
        g.draw(new Line2D.Double(left, axis + outer, tip, axis + outer));
        g.setColor(Ink.accent());
        for (int i = 0; i < DROPS; i++) {
            double x = tip + DROP_STEP * (i + 0.6);
            g.fill(new Ellipse2D.Double(x - DROP / 2, axis - DROP / 2, DROP, DROP));
        }
    }

    /** The mark of a file that passes beyond the working length, or is brought back to it. */
    static void mark(Graphics2D g, LaneContent lane, double workingLengthMm, SceneScale scale, double axis) {
        g.setColor(Ink.accent());
        g.setStroke(new BasicStroke(1.6f));
        double end = scale.x(workingLengthMm);
        if (lane.step() instanceof Patency) {
            double tip = Math.max(end + 2 * ARROW, scale.x(lane.depthMm()));
            g.draw(new Line2D.Double(end - 2 * ARROW, axis, tip, axis));
            head(g, tip, axis, 1);
        } else if (lane.step() instanceof Recapitulation) {
            double centre = end + RETURN + 3;
            g.draw(new Arc2D.Double(centre - RETURN, axis - RETURN, 2 * RETURN, 2 * RETURN, 200, 250, Arc2D.OPEN));
            double angle = Math.toRadians(200);
            head(g, centre + RETURN * Math.cos(angle), axis - RETURN * Math.sin(angle), -1);
        }
    }

    private static void head(Graphics2D g, double x, double y, int way) {
        Path2D head = new Path2D.Double();
        head.moveTo(x + way * ARROW / 2, y);
        head.lineTo(x - way * ARROW / 2, y - ARROW);
        head.lineTo(x - way * ARROW / 2, y + ARROW);
        head.closePath();
        g.fill(head);
    }
}
