package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An arc that replaces a corner.
 *
 * @param from where the outline leaves for the arc
 * @param arc the arc
 * @param to where the outline goes on
 */
record CornerArc(Place from, Segment arc, Place to) {
    private static final int STEPS = 64;
    private static final double TOUCH = 1e-13;

    /** A stretch of the outline from a place on, with the arc length at which each piece begins. */
    private record Side(Walk walk, List<Integer> indices, List<double[]> parts, List<Double> begins, double length) {
        /** Goes from a place forwards or backwards as far as {@code reach}. */
        static Side from(Walk walk, Place start, boolean forward, double reach) {
            List<Integer> indices = new ArrayList<>();
            List<double[]> parts = new ArrayList<>();
            List<Double> begins = new ArrayList<>();
            double done = 0;
            int index = start.segment();
            double t = start.t();
            while (done < reach && indices.size() <= walk.segments().size()) {
                double length = walk.segments().get(index).length();
                double rest = (forward ? 1 - t : t) * length;
                double taken = Math.min(rest, reach - done);
                if (taken > 0) {
                    indices.add(index);
                    parts.add(new double[] {t, forward ? t + taken / length : t - taken / length});
                    begins.add(done);
                    done += taken;
                }
                index = Math.floorMod(
                        forward ? index + 1 : index - 1, walk.segments().size());
                t = forward ? 0 : 1;
            }
            return new Side(walk, indices, parts, begins, done);
        }

        Place at(double distance) {
            int k = indices.size() - 1;
            while (k > 0 && begins.get(k) > distance) {
                k--;
            }
            double[] part = parts.get(k);
            double length = walk.segments().get(indices.get(k)).length();
            double t = part[0] + Math.signum(part[1] - part[0]) * (distance - begins.get(k)) / length;
            return new Place(indices.get(k), Math.max(0, Math.min(1, t)));
        }

        Place nearest(Point point) {
            Place best = at(0);
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < indices.size(); k++) {
                double low = Math.min(parts.get(k)[0], parts.get(k)[1]);
                double high = Math.max(parts.get(k)[0], parts.get(k)[1]);
                Segment segment = walk.segments().get(indices.get(k));
                double t = Math.max(low, Math.min(high, segment.nearest(point)));
                double distance = segment.at(t).distanceTo(point);
                if (distance < least) {
                    least = distance;
                    best = new Place(indices.get(k), t);
                }
            }
            return best;
        }
    }

    /**
     * The arc of a given radius that touches both sides of a corner: a ball rolled along the side before the corner until
     * it touches the side after it. Works alike for lines, arcs and sides of many points.
     *
     * @param reach how far each side may be used up, in diameters
     * @return empty if no such arc touches both sides within reach
     */
    static Optional<CornerArc> of(Walk walk, Corner corner, double radius, double reachBefore, double reachAfter) {
        double sense = Math.signum(corner.turn());
        Side before = Side.from(walk, corner.apex(), false, reachBefore);
        Side after = Side.from(walk, corner.apex(), true, reachAfter);
        if (before.length() == 0 || after.length() == 0) {
            return Optional.empty();
        }
        double low = 0;
        double high = 0;
        boolean found = false;
        for (int i = 1; i <= STEPS && !found; i++) {
            double share = (double) i / STEPS;
            low = high;
            high = before.length() * share * share;
            found = gap(walk, before, after, high, sense * radius) >= -TOUCH;
        }
        if (!found) {
            return Optional.empty();
        }
        while (high - low > 1e-15) {
            double middle = (low + high) / 2;
            if (gap(walk, before, after, middle, sense * radius) >= -TOUCH) {
                high = middle;
            } else {
                low = middle;
            }
        }
        Place from = before.at(high);
        Point centre = ballCentre(walk, from, sense * radius);
        Place to = after.nearest(centre);
        return Optional.of(new CornerArc(from, arc(walk.at(from), walk.at(to), centre, sense), to));
    }

    /** Ends exactly on both sides, even where the ball meets a side of many points only nearly. */
    private static Segment arc(Point from, Point to, Point centre, double sense) {
        Point a = from.minus(centre);
        Point b = to.minus(centre);
        double turn = Math.atan2(a.cross(b), a.dot(b));
        double sweep = sense * Angles.positive(sense * turn);
        return Segment.bowed(from, to, from.distanceTo(to) / 2 * Math.tan(sweep / 4));
    }

    private static double gap(Walk walk, Side before, Side after, double distance, double signedRadius) {
        Point centre = ballCentre(walk, before.at(distance), signedRadius);
        return walk.at(after.nearest(centre)).distanceTo(centre) - Math.abs(signedRadius);
    }

    /** On the left of the run for a corner that sticks out, on the right for one that reaches in. */
    private static Point ballCentre(Walk walk, Place place, double signedRadius) {
        double direction = walk.segments().get(place.segment()).direction(place.t());
        return walk.at(place).plus(Point.polar(signedRadius, direction + Math.PI / 2));
    }
}
