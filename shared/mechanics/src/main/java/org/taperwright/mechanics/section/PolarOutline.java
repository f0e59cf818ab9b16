package org.taperwright.mechanics.section;

import java.util.List;

/** A star-shaped outline as the distance from the axis by direction; finds the segment by bisection. */
final class PolarOutline {
    private final List<Segment> segments;
    private final double first;
    private final double[] offsets;

    PolarOutline(Outline outline) {
        segments = outline.segments();
        first = segments.get(0).start().angle();
        offsets = new double[segments.size()];
        for (int i = 1; i < segments.size(); i++) {
            offsets[i] = Angles.positive(segments.get(i).start().angle() - first);
        }
    }

    /** Directions at which segments begin, rad in [0, 2 pi). */
    double[] joints() {
        double[] result = new double[offsets.length];
        for (int i = 0; i < offsets.length; i++) {
            result[i] = Angles.positive(first + offsets[i]);
        }
        return result;
    }

    /** Distance of the outline from the axis in a direction. */
    double radius(double angle) {
        int found = java.util.Arrays.binarySearch(offsets, Angles.positive(angle - first));
        int index = found >= 0 ? found : -found - 2;
        Segment segment = segments.get(Math.max(0, index));
        Point ray = Point.polar(1, angle);
        if (segment instanceof Segment.Line line) {
            Point along = line.to().minus(line.from());
            return line.from().cross(along) / ray.cross(along);
        }
        Segment.Arc arc = (Segment.Arc) segment;
        double middle = arc.centre().dot(ray);
        double aside = arc.centre().cross(ray);
        double half = Math.sqrt(Math.max(0, (arc.radius() - aside) * (arc.radius() + aside)));
        return arc.turn() > 0 ? middle + half : middle - half;
    }
}
