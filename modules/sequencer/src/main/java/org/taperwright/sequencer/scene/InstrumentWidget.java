package org.taperwright.sequencer.scene;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import org.netbeans.api.visual.widget.Scene;
import org.taperwright.mechanics.design.Design;
import org.taperwright.shaping.passage.StepGeometry;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.workbench.ui.Ink;

/**
 * An instrument's silhouette at its depth, hatched in the accent where it is wider than what was there before. Dragged
 * along the canal to change the depth.
 */
final class InstrumentWidget extends SceneWidget {
    private static final int HATCH = 5;
    /** Room before the tip for what tells a step of another kind, px. */
    private static final int MARK_ROOM = 28;

    private LaneContent lane;
    private SceneContent content;
    private SceneScale scale;
    private double originX;

    InstrumentWidget(Scene scene, SceneContent content, LaneContent lane, SceneScale scale) {
        super(scene);
        this.content = content;
        this.lane = lane;
        this.scale = scale;
    }

    void show(SceneContent newContent, LaneContent newLane, SceneScale newScale, SceneLayout layout) {
        content = newContent;
        lane = newLane;
        scale = newScale;
        originX = scale.left();
        int tip = (int) Math.ceil(scale.x(lane.depthMm())) + (lane.step() instanceof InstrumentStep ? 3 : MARK_ROOM);
        double axis = layout.axisInLane();
        int top = (int) (axis - layout.silhouette() / 2.0) - 2;
        place((int) originX, top, tip - (int) originX, layout.silhouette() + 4);
        setToolTipText(tip());
    }

    /** The lane it stands in. */
    LaneContent lane() {
        return lane;
    }

    private String tip() {
        if (lane.step() instanceof Patency || lane.step() instanceof Recapitulation) {
            return String.format(
                    Locale.ROOT,
                    "%s to %.1f mm. Its depth follows from the working length.",
                    lane.name(),
                    lane.depthMm());
        }
        return lane.geometry()
                .filter(geometry -> !geometry.engaged().isEmpty())
                .map(geometry -> String.format(
                        Locale.ROOT,
                        "%s at %.1f mm: at most %.2f mm wider than what was there before. Drag along to change depth.",
                        lane.name(),
                        lane.depthMm(),
                        geometry.greatestExcessMm()))
                .orElse(String.format(
                        Locale.ROOT, "%s at %.1f mm. Drag along to change depth.", lane.name(), lane.depthMm()));
    }

    @Override
    void draw(Graphics2D g) {
        if (lane.step() instanceof Irrigation rinse) {
            g.translate(-originX, 0);
            BetweenDrawing.needle(g, rinse, lane, scale, area().height / 2.0);
        } else {
            lane.instrument().ifPresent(instrument -> draw(g, instrument.design()));
        }
    }

    private void draw(Graphics2D g, Design design) {
        g.translate(-originX, 0);
        g.clip(new Rectangle2D.Double(scale.left(), 0, scale.right() - scale.left(), area().height));
        double axis = area().height / 2.0;
        double from = Math.max(scale.fromMm(), lane.depthMm() - design.lengthMm());
        if (from >= lane.depthMm()) {
            return;
        }
        Path2D body = Silhouettes.of(depth -> diameterMm(design, depth), from, lane.depthMm(), scale, axis);
        g.setColor(Ink.translucent(Ink.paper(), 0.55));
        g.fill(body);
        lane.geometry().ifPresent(geometry -> engaged(g, geometry, body));
        g.setColor(Ink.text());
        g.setStroke(BetweenDrawing.outline(lane));
        g.draw(body);
        double blade = scale.x(lane.depthMm() - design.workingPartMm());
        if (blade > scale.left()) {
            double half = diameterMm(design, lane.depthMm() - design.workingPartMm()) / 2 * scale.acrossPixelsPerMm();
            g.draw(new Line2D.Double(blade, axis - half, blade, axis + half));
        }
        BetweenDrawing.mark(g, lane, content.canal().workingLengthMm(), scale, axis);
    }

    /** Diameter at a depth: the taper cut off by the conical tip, as in the passage's own silhouette. */
    private double diameterMm(Design design, double depthMm) {
        double level = Math.max(0, lane.depthMm() - depthMm);
        double cone = 2 * level * Math.tan(Math.toRadians(design.tip().angleDeg()) / 2);
        return Math.min(design.diameterMm(level), cone);
    }

    private void engaged(Graphics2D g, StepGeometry geometry, Path2D body) {
        Color colour = lane.outdated() ? Ink.mix(Ink.accent(), Ink.paper(), 0.6) : Ink.accent();
        double reference = content.canal().coronalReferenceMm();
        Shape clip = g.getClip();
        for (StepGeometry.Stretch stretch : geometry.engaged()) {
            double from = scale.x(reference + stretch.fromMm());
            double to = scale.x(reference + stretch.toMm());
            g.clip(new Rectangle2D.Double(from, 0, Math.max(1, to - from), area().height));
            g.clip(body);
            g.setColor(Ink.translucent(colour, 0.25));
            g.fill(body);
            g.setColor(colour);
            g.setStroke(new BasicStroke(1));
            Rectangle bounds = area();
            for (double x = from - bounds.height; x < to; x += HATCH) {
                g.draw(new Line2D.Double(x, bounds.height, x + bounds.height, 0));
            }
            g.setClip(clip);
        }
    }
}
