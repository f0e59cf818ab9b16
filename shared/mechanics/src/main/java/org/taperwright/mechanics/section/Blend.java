package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import org.taperwright.mechanics.work.BoundedCache;

/**
 * The outline between two others. When both are star-shaped about the axis, distances from the axis are mixed at equal
 * angle: {@code r = (1 - share) ra + share rb}. Otherwise points are mixed at equal shares of arc length, counted from
 * where each last crosses the ray along +x; should that cross itself, the outermost distances are mixed at equal angle.
 * The result is made of arcs through three points of the exact curve, which also meet it at a quarter and three quarters
 * to {@link #TOLERANCE}, and is scaled to circumscribed diameter 1.
 */
final class Blend {
    /** In diameters. */
    static final double TOLERANCE = 1e-5;

    private static final int DEPTH = 12;
    private static final double SAME = 1e-9;
    /** A blade asks for the same few blends again at every assessment. */
    private static final BoundedCache<Mixture, Outline> KEPT = new BoundedCache<>(96);

    private Blend() {}

    static Outline of(Outline a, Outline b, double share) {
        if (share <= 0 || a.equals(b)) {
            return a;
        }
        if (share >= 1) {
            return b;
        }
        return KEPT.get(new Mixture(a, b, share), Mixture::outline);
    }

    private record Mixture(Outline a, Outline b, double share) {
        Outline outline() {
            return mixed(a, b, share);
        }
    }

    private static Outline mixed(Outline a, Outline b, double share) {
        if (Rays.starShaped(a.segments()) && Rays.starShaped(b.segments())) {
            return byAngle(a, b, share);
        }
        List<Segment> mixed = byLength(a, b, share);
        boolean sound = Simplicity.crossing(mixed).isEmpty()
                && Outlines.area(mixed) > 0
                && Containment.contains(mixed, Point.AXIS);
        return sound ? Outlines.normalised(mixed) : byOutermost(a, b, share);
    }

    private static Outline byAngle(Outline a, Outline b, double share) {
        PolarOutline first = new PolarOutline(a);
        PolarOutline second = new PolarOutline(b);
        double[] joints = DoubleStream.concat(DoubleStream.of(first.joints()), DoubleStream.of(second.joints()))
                .sorted()
                .toArray();
        return Outlines.normalised(traced(
                angle -> Point.polar((1 - share) * first.radius(angle) + share * second.radius(angle), angle),
                joints,
                Angles.FULL));
    }

    private static Outline byOutermost(Outline a, Outline b, double share) {
        double[] joints = DoubleStream.iterate(0, i -> i + 1)
                .limit(720)
                .map(i -> i * Angles.FULL / 720)
                .toArray();
        List<Segment> result = new ArrayList<>();
        for (int i = 0; i < joints.length; i++) {
            result.add(new Segment.Line(
                    outermost(a, b, share, joints[i]), outermost(a, b, share, joints[(i + 1) % joints.length])));
        }
        return Outlines.normalised(result);
    }

    private static Point outermost(Outline a, Outline b, double share, double angle) {
        double radius = (1 - share) * Outlines.radiusAt(a, angle) + share * Outlines.radiusAt(b, angle);
        return Point.polar(radius, angle);
    }

    private static List<Segment> byLength(Outline a, Outline b, double share) {
        LengthOutline first = new LengthOutline(a);
        LengthOutline second = new LengthOutline(b);
        double[] joints = DoubleStream.concat(DoubleStream.of(first.joints()), DoubleStream.of(second.joints()))
                .sorted()
                .toArray();
        return traced(s -> first.at(s).times(1 - share).plus(second.at(s).times(share)), joints, 1);
    }

    /** A closed curve of one parameter, cut at its joints, as arcs. */
    private static List<Segment> traced(DoubleFunction<Point> curve, double[] joints, double period) {
        List<Segment> result = new ArrayList<>();
        double[] kept = apart(joints, period);
        for (int i = 0; i < kept.length; i++) {
            double to = i + 1 < kept.length ? kept[i + 1] : kept[0] + period;
            addArcs(
                    curve,
                    kept[i],
                    to,
                    curve.apply(kept[i]),
                    curve.apply(i + 1 < kept.length ? to : kept[0]),
                    0,
                    result);
        }
        return result;
    }

    private static double[] apart(double[] sorted, double period) {
        List<Double> kept = new ArrayList<>();
        for (double joint : sorted) {
            boolean fresh =
                    kept.isEmpty() || joint - kept.get(kept.size() - 1) > SAME && joint - kept.get(0) < period - SAME;
            if (fresh) {
                kept.add(joint);
            }
        }
        if (kept.size() == 1) {
            kept.add(kept.get(0) + period / 2);
        }
        return kept.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void addArcs(
            DoubleFunction<Point> curve,
            double from,
            double to,
            Point start,
            Point end,
            int depth,
            List<Segment> result) {
        double middle = (from + to) / 2;
        Point via = curve.apply(middle);
        Segment arc = Segment.through(start, via, end);
        boolean near = Math.abs(arc.turn()) < Math.PI / 2
                && off(arc, curve.apply((from + middle) / 2)) < TOLERANCE
                && off(arc, curve.apply((middle + to) / 2)) < TOLERANCE;
        if (near || depth >= DEPTH) {
            result.add(arc);
        } else {
            addArcs(curve, from, middle, start, via, depth + 1, result);
            addArcs(curve, middle, to, via, end, depth + 1, result);
        }
    }

    private static double off(Segment arc, Point point) {
        return arc.at(arc.nearest(point)).distanceTo(point);
    }
}
