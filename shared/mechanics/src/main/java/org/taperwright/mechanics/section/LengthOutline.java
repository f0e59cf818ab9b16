package org.taperwright.mechanics.section;

import java.util.Arrays;

/** An outline by its share of arc length, 0 to 1, counted from where it last crosses the ray along +x. */
final class LengthOutline {
    private final Walk walk;
    private final double[] starts;
    private final double origin;

    LengthOutline(Outline outline) {
        walk = new Walk(outline.segments());
        starts = walk.starts();
        Point zero = Rays.outermost(outline, 0);
        double least = Double.POSITIVE_INFINITY;
        double found = 0;
        for (int i = 0; i < walk.segments().size(); i++) {
            Segment segment = walk.segments().get(i);
            double t = segment.nearest(zero);
            double distance = segment.at(t).distanceTo(zero);
            if (distance < least - 1e-12) {
                least = distance;
                found = starts[i] + t * segment.length();
            }
        }
        origin = found;
    }

    private double total() {
        return starts[starts.length - 1];
    }

    /** Shares at which segments begin, in [0, 1). */
    double[] joints() {
        return Arrays.stream(starts, 0, starts.length - 1)
                .map(start -> share(start - origin))
                .toArray();
    }

    private double share(double distance) {
        double result = distance / total();
        return result < 0 ? result + 1 : result;
    }

    /** The point at a share of the length. */
    Point at(double share) {
        double s = (origin + share * total()) % total();
        int found = Arrays.binarySearch(starts, s);
        int index = Math.min(found >= 0 ? found : -found - 2, walk.segments().size() - 1);
        double length = starts[index + 1] - starts[index];
        return walk.at(new Place(index, length == 0 ? 0 : (s - starts[index]) / length));
    }
}
