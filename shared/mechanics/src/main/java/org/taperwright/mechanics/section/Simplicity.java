package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether a closed run of segments crosses or touches itself, and where. */
final class Simplicity {
    private static final double TOUCH = 1e-9;
    /** A joint that turns further than this runs back on itself. */
    private static final double BACK = Math.toRadians(179.9);

    private Simplicity() {}

    /** Two segments that meet where they should not. */
    record Crossing(int first, int second, Point at) {}

    private record Box(int index, double left, double right, double bottom, double top) {
        static Box of(int index, Segment segment) {
            Point a = segment.start();
            Point b = segment.end();
            double grown = TOUCH;
            if (segment instanceof Segment.Arc) {
                Point middle = segment.at(0.5);
                double bow = middle.distanceTo(a.plus(b).times(0.5)) + a.distanceTo(middle);
                grown += bow;
            }
            return new Box(
                    index,
                    Math.min(a.x(), b.x()) - grown,
                    Math.max(a.x(), b.x()) + grown,
                    Math.min(a.y(), b.y()) - grown,
                    Math.max(a.y(), b.y()) + grown);
        }
    }

    /** A place where the run is not simple; empty if there is none. */
    static Optional<Crossing> crossing(List<Segment> segments) {
        Walk walk = new Walk(segments);
        for (int i = 0; i < segments.size(); i++) {
            if (Math.abs(walk.turnAtEnd(i)) > BACK) {
                return Optional.of(new Crossing(
                        i, (i + 1) % segments.size(), segments.get(i).end()));
            }
        }
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < segments.size(); i++) {
            boxes.add(Box.of(i, segments.get(i)));
        }
        boxes.sort(Comparator.comparingDouble(Box::left));
        return sweep(segments, boxes);
    }

    private static Optional<Crossing> sweep(List<Segment> segments, List<Box> boxes) {
        for (int i = 0; i < boxes.size(); i++) {
            Box a = boxes.get(i);
            for (int k = i + 1; k < boxes.size() && boxes.get(k).left() <= a.right(); k++) {
                Box b = boxes.get(k);
                if (b.bottom() <= a.top() && a.bottom() <= b.top()) {
                    Optional<Crossing> found =
                            meeting(segments, Math.min(a.index(), b.index()), Math.max(a.index(), b.index()));
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Crossing> meeting(List<Segment> segments, int first, int second) {
        Segment a = segments.get(first);
        Segment b = segments.get(second);
        boolean after = second == first + 1;
        boolean before = first == 0 && second == segments.size() - 1;
        for (double t : CircleCrossings.between(a, b)) {
            Point at = a.at(t);
            boolean joint = after && at.distanceTo(a.end()) < TOUCH || before && at.distanceTo(a.start()) < TOUCH;
            if (!joint) {
                return Optional.of(new Crossing(first, second, at));
            }
        }
        if (!after && !before && apart(a, b) < TOUCH) {
            return Optional.of(new Crossing(first, second, a.start()));
        }
        return Optional.empty();
    }

    /** Least distance of either's ends from the other: finds overlaps along a line, which have no single crossing. */
    private static double apart(Segment a, Segment b) {
        return Math.min(
                Math.min(distance(a, b.start()), distance(a, b.end())),
                Math.min(distance(b, a.start()), distance(b, a.end())));
    }

    private static double distance(Segment segment, Point point) {
        return segment.at(segment.nearest(point)).distanceTo(point);
    }
}
