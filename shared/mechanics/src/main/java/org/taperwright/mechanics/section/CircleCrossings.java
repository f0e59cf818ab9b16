package org.taperwright.mechanics.section;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/** Where segments cross a circle: exact for lines (quadratic) and arcs (two circles). */
final class CircleCrossings {
    /** Parameters this far beyond an end still count, so that a crossing at a joint is not lost between segments. */
    private static final double SLACK = 1e-12;

    private CircleCrossings() {}

    /** Parameters from 0 to 1, rising, at which the segment meets the circle; none when the arc lies on it. */
    static double[] of(Segment segment, Point centre, double radius) {
        if (segment instanceof Segment.Line line) {
            return ofLine(line, centre, radius);
        }
        return ofArc((Segment.Arc) segment, centre, radius);
    }

    private static double[] ofLine(Segment.Line line, Point centre, double radius) {
        Point along = line.to().minus(line.from());
        Point out = line.from().minus(centre);
        double a = along.dot(along);
        double b = out.dot(along);
        double c = (out.radius() - radius) * (out.radius() + radius);
        double discriminant = b * b - a * c;
        if (a == 0 || discriminant < 0) {
            return new double[0];
        }
        double q = -(b + Math.copySign(Math.sqrt(discriminant), b));
        return q == 0 ? inside(0) : inside(q / a, c / q);
    }

    private static double[] ofArc(Segment.Arc arc, Point centre, double radius) {
        boolean arcIsSmaller = arc.radius() < radius;
        Point near = arcIsSmaller ? arc.centre() : centre;
        Point far = arcIsSmaller ? centre : arc.centre();
        double small = Math.min(arc.radius(), radius);
        double large = Math.max(arc.radius(), radius);
        double distance = near.distanceTo(far);
        if (distance == 0 || small == 0) {
            return new double[0];
        }
        // measured from the smaller circle, because a side bowed slightly belongs to a circle of hundreds of diameters
        double along = ((distance - large) * (distance + large) + small * small) / (2 * distance);
        double square = (small - along) * (small + along);
        if (square < 0) {
            return new double[0];
        }
        Point unit = far.minus(near).times(1 / distance);
        Point foot = near.plus(unit.times(along));
        Point aside = new Point(-unit.y(), unit.x()).times(Math.sqrt(square));
        return inside(parameter(arc, foot.plus(aside)), parameter(arc, foot.minus(aside)));
    }

    private static double parameter(Segment.Arc arc, Point point) {
        return arc.parameter(point.minus(arc.centre()).angle());
    }

    private static double[] inside(double... parameters) {
        return DoubleStream.of(parameters)
                .filter(t -> t >= -SLACK && t <= 1 + SLACK)
                .map(t -> Math.max(0, Math.min(1, t)))
                .sorted()
                .distinct()
                .toArray();
    }

    /** All parameters at which two segments meet, on the first; collinear overlaps give none. */
    static double[] between(Segment first, Segment second) {
        if (second instanceof Segment.Arc arc) {
            return Arrays.stream(of(first, arc.centre(), arc.radius()))
                    .filter(t -> within(parameter(arc, first.at(t))))
                    .toArray();
        }
        if (first instanceof Segment.Arc arc) {
            Segment.Line line = (Segment.Line) second;
            return Arrays.stream(of(line, arc.centre(), arc.radius()))
                    .map(t -> parameter(arc, line.at(t)))
                    .filter(CircleCrossings::within)
                    .map(t -> Math.max(0, Math.min(1, t)))
                    .toArray();
        }
        return betweenLines((Segment.Line) first, (Segment.Line) second);
    }

    private static double[] betweenLines(Segment.Line first, Segment.Line second) {
        Point a = first.to().minus(first.from());
        Point b = second.to().minus(second.from());
        Point apart = second.from().minus(first.from());
        double denominator = a.cross(b);
        if (denominator == 0) {
            return new double[0];
        }
        double t = apart.cross(b) / denominator;
        double u = apart.cross(a) / denominator;
        return within(t) && within(u) ? inside(t) : new double[0];
    }

    private static boolean within(double t) {
        return t >= -SLACK && t <= 1 + SLACK;
    }
}
