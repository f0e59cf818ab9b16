package org.taperwright.comparer.ui;

import java.awt.geom.Path2D;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Segment;

/** An outline as a path to draw, in diameters. */
final class OutlinePath {
    private static final double RAD_PER_STEP = Math.toRadians(3);

    private OutlinePath() {}

    static Path2D of(Outline outline) {
        Path2D path = new Path2D.Double();
        boolean first = true;
        for (Segment segment : outline.segments()) {
            if (first) {
                path.moveTo(segment.start().x(), segment.start().y());
                first = false;
            }
            int steps = segment instanceof Segment.Arc arc
                    ? (int) Math.max(1, Math.ceil(Math.abs(arc.toAngle() - arc.fromAngle()) / RAD_PER_STEP))
                    : 1;
            for (int i = 1; i <= steps; i++) {
                Point point = segment.at((double) i / steps);
                path.lineTo(point.x(), point.y());
            }
        }
        path.closePath();
        return path;
    }
}
