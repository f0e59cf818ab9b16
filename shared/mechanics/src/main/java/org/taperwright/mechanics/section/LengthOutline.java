package org.taperwright.mechanics.section;

import java.util.stream.IntStream;

/** An outline by its share of arc length, 0 to 1, counted from where it last crosses the ray along +x. */
final class LengthOutline {
    private final Walk walk;
    private final double origin;

    LengthOutline(Outline outline) {
        walk = new Walk(outline.segments());
        Point zero = Rays.outermost(outline, 0);
        double least = Double.POSITIVE_INFINITY;
        double found = 0;
        for (int i = 0; i < walk.segments().size(); i++) {
            Segment segment = walk.segments().get(i);
            double t = segment.nearest(zero);
            double distance = segment.at(t).distanceTo(zero);
            if (distance < least - 1e-12) {
                least = distance;
                found = walk.position(new Place(i, t));
            }
        }
        origin = found;
    }

    /** Shares at which segments begin, in [0, 1). */
    double[] joints() {
        return IntStream.range(0, walk.segments().size())
                .mapToDouble(i -> share(walk.startOf(i) - origin))
                .toArray();
    }

    private double share(double distance) {
        double result = distance / walk.length();
        return result < 0 ? result + 1 : result;
    }

    /** The point at a share of the length. */
    Point at(double share) {
        return walk.at(walk.place(origin + share * walk.length()));
    }
}
