package org.taperwright.mechanics.section;

import java.util.List;

/** Rays from the axis across an outline, and whether each meets it only once. */
final class Rays {
    /** A line whose ends lie this clearly on one side of a ray does not meet it; square diameters. */
    private static final double ASIDE = 1e-20;

    private Rays() {}

    /** The point where a ray last leaves the outline. */
    static Point outermost(Outline outline, double angle) {
        Segment ray = new Segment.Line(Point.AXIS, Point.polar(2 * Outlines.CIRCLE_RADIUS, angle));
        Point best = Point.AXIS;
        Point towards = Point.polar(1, angle);
        for (Segment segment : outline.segments()) {
            if (segment instanceof Segment.Line line && towards.cross(line.from()) * towards.cross(line.to()) > ASIDE) {
                continue;
            }
            for (double t : CircleCrossings.between(ray, segment)) {
                Point point = ray.at(t);
                best = point.radius() > best.radius() ? point : best;
            }
        }
        return best;
    }

    /** Whether the direction from the axis rises all along the outline, so that every ray meets it once. */
    static boolean starShaped(List<Segment> segments) {
        return segments.stream().allMatch(segment -> leastMoment(segment) > 1e-9);
    }

    /** Least value along the segment of {@code p x t}, t the unit tangent: positive while the angle rises. */
    private static double leastMoment(Segment segment) {
        double ends = Math.min(moment(segment, 0), moment(segment, 1));
        if (segment instanceof Segment.Arc arc && arc.centre().radius() > 0) {
            double sense = Math.signum(arc.turn());
            double t = arc.parameter(arc.centre().times(-sense).angle());
            return t > 0 && t < 1
                    ? Math.min(ends, sense * arc.radius() - arc.centre().radius())
                    : ends;
        }
        return ends;
    }

    private static double moment(Segment segment, double t) {
        return segment.at(t).cross(Point.polar(1, segment.direction(t)));
    }
}
