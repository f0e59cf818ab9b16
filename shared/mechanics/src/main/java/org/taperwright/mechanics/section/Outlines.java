package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.List;

/** Measures of an outline and moves of it about the axis; all exact for lines and arcs. Lengths in diameters. */
public final class Outlines {
    /** Radius of the circumscribed circle of every outline. */
    public static final double CIRCLE_RADIUS = 0.5;

    private Outlines() {}

    /** Radius of the circumscribed circle about the axis. */
    public static double circumscribedRadius(List<Segment> segments) {
        return segments.stream().mapToDouble(Outlines::farthest).max().orElse(0);
    }

    /** Greatest distance of a segment from the axis. */
    static double farthest(Segment segment) {
        double ends = Math.max(segment.start().radius(), segment.end().radius());
        if (segment instanceof Segment.Arc arc && arc.centre().radius() > 0) {
            double t = arc.parameter(arc.centre().angle());
            return t > 0 && t < 1 ? arc.centre().radius() + arc.radius() : ends;
        }
        return ends;
    }

    /** Scaled about the axis so that the circumscribed circle has diameter 1. */
    public static Outline normalised(List<Segment> segments) {
        double factor = CIRCLE_RADIUS / circumscribedRadius(segments);
        if (Math.abs(factor - 1) < 1e-15) {
            return new Outline(segments);
        }
        return new Outline(
                segments.stream().map(segment -> segment.scaled(factor)).toList());
    }

    /** Radius of the core: the distance of the axis from the outline. */
    public static double coreRadius(Outline outline) {
        return distance(outline, Point.AXIS);
    }

    /** Distance of a point from the outline. */
    public static double distance(Outline outline, Point point) {
        return outline.segments().stream()
                .mapToDouble(segment -> segment.at(segment.nearest(point)).distanceTo(point))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Enclosed area {@code 1/2 of the contour integral of x dy - y dx}; positive when run through anticlockwise. */
    public static double area(List<Segment> segments) {
        double twice = 0;
        for (Segment segment : segments) {
            twice += segment.start().cross(segment.end());
            if (segment instanceof Segment.Arc arc) {
                twice += arc.radius() * arc.radius() * (arc.turn() - Math.sin(arc.turn()));
            }
        }
        return twice / 2;
    }

    /** Length of the outline. */
    public static double perimeter(Outline outline) {
        return outline.segments().stream().mapToDouble(Segment::length).sum();
    }

    /** Whether a point lies inside. */
    public static boolean contains(Outline outline, Point point) {
        return Containment.contains(outline.segments(), point);
    }

    /** Distance from the axis at which a ray last leaves the outline; for star-shaped outlines the only one. */
    public static double radiusAt(Outline outline, double angle) {
        return Rays.outermost(outline, angle).radius();
    }

    /** Turned about the axis, rad, anticlockwise. */
    public static Outline turned(Outline outline, double angle) {
        return new Outline(outline.segments().stream()
                .map(segment -> segment.turned(angle))
                .toList());
    }

    /** Mirrored in the x-axis, still anticlockwise. */
    public static Outline mirrored(Outline outline) {
        List<Segment> result = new ArrayList<>();
        for (int i = outline.segments().size() - 1; i >= 0; i--) {
            result.add(outline.segments().get(i).mirrored());
        }
        return new Outline(result);
    }

    /**
     * The outline as a polygon whose chords stay within a tolerance of the arcs.
     *
     * @param tolerance greatest distance between chord and arc, in diameters
     */
    public static List<Point> flattened(Outline outline, double tolerance) {
        List<Point> result = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            int pieces = pieces(segment, tolerance);
            for (int i = 0; i < pieces; i++) {
                result.add(segment.at((double) i / pieces));
            }
        }
        return result;
    }

    private static int pieces(Segment segment, double tolerance) {
        if (segment instanceof Segment.Arc arc) {
            double step = 2 * Math.acos(Math.max(0, 1 - tolerance / arc.radius()));
            return Math.max(1, (int) Math.ceil(Math.abs(arc.turn()) / Math.max(step, 1e-4)));
        }
        return 1;
    }

    /**
     * The outline with its sharp re-entrant corners filled by arcs, because there the elastic shear has no finite peak.
     * Where the radius does not fit it is halved until it does.
     *
     * @param radius in diameters
     */
    public static Outline filletReentrant(Outline outline, double radius) {
        return CornerArcs.filletReentrant(outline, radius);
    }
}
