package org.taperwright.sequencer.scene;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.passage.Third;
import org.taperwright.workbench.ui.Ink;

/** Draws the lines between thirds, dashed, and those at the orifice and where instrumentation ends, solid. */
final class Thirds {
    private Thirds() {}

    static void draw(Graphics2D g, Canal canal, SceneScale scale, double top, double bottom) {
        CanalGeometry geometry = new CanalGeometry(canal);
        for (Third third : Third.values()) {
            boolean orifice = third == Third.CORONAL;
            line(g, scale.x(canal.coronalReferenceMm() + third.fromMm(geometry)), top, bottom, orifice);
        }
        line(g, scale.x(canal.workingLengthMm()), top, bottom, true);
    }

    private static void line(Graphics2D g, double x, double top, double bottom, boolean solid) {
        g.setColor(Ink.mix(Ink.text(), Ink.paper(), solid ? 0.6 : 0.75));
        g.setStroke(
                solid
                        ? new BasicStroke(1)
                        : new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {2, 3}, 0));
        g.draw(new Line2D.Double(x, top, x, bottom));
    }
}
