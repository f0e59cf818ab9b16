package org.taperwright.sequencer.scene;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.workbench.ui.Ink;

/** Draws what is open at each depth: the greater diameter lightly, the lesser one over it. */
final class Openings {
    private Openings() {}

    static void draw(Graphics2D g, WideningSoFar open, Canal canal, SceneScale scale, double axis) {
        double from = canal.coronalReferenceMm();
        double to = open.endMm();
        Path2D wide = Silhouettes.of(open::wideMm, from, to, scale, axis);
        Path2D narrow = Silhouettes.of(open::narrowMm, from, to, scale, axis);
        Color line = Ink.mix(Ink.text(), Ink.paper(), 0.55);
        g.setColor(Ink.mix(Ink.text(), Ink.paper(), 0.92));
        g.fill(wide);
        g.setColor(Ink.mix(Ink.text(), Ink.paper(), 0.82));
        g.fill(narrow);
        g.setColor(line);
        g.setStroke(new BasicStroke(0.8f));
        g.draw(wide);
    }
}
