package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A place where an outline can cut: a corner on the circumscribed circle, or two corners with a land between them.
 *
 * @param first the corner reached first on the anticlockwise run
 * @param last the corner reached last; the same as {@code first} for a sharp edge
 */
record EdgePlace(Corner first, Corner last) {
    /** How near the circumscribed circle a corner must stand, in diameters. */
    static final double ON_CIRCLE = 0.02;
    /** How far a land may fall short of its lower corner, in diameters. */
    static final double LAND_SAG = 0.005;

    /** All such places of an outline of circumscribed diameter 1, anticlockwise; none on a round bar. */
    static List<EdgePlace> of(List<Segment> segments) {
        Walk walk = new Walk(segments);
        List<Corner> corners = withLandEnds(
                walk,
                Corners.convex(segments).stream()
                        .filter(corner -> walk.at(corner.apex()).radius() >= Outlines.CIRCLE_RADIUS - ON_CIRCLE)
                        .toList());
        int start = 0;
        while (start < corners.size() && joined(walk, before(corners, start), corners.get(start))) {
            start++;
        }
        List<EdgePlace> result = new ArrayList<>();
        if (start == corners.size()) {
            return result;
        }
        for (int i = 0; i < corners.size(); i++) {
            Corner corner = corners.get((start + i) % corners.size());
            if (i > 0 && joined(walk, before(corners, start + i), corner)) {
                EdgePlace open = result.remove(result.size() - 1);
                result.add(new EdgePlace(open.first(), corner));
            } else {
                result.add(new EdgePlace(corner, corner));
            }
        }
        return result;
    }

    /** A land begins and ends with a corner even where one of the two is too blunt to be found by its turn. */
    private static List<Corner> withLandEnds(Walk walk, List<Corner> sharp) {
        List<Corner> result = new ArrayList<>(sharp);
        result.removeIf(corner -> !innerLand(walk, corner).isEmpty());
        for (Corner corner : sharp) {
            List<Integer> inner = innerLand(walk, corner);
            if (!inner.isEmpty()) {
                addStart(walk, result, inner.get(0));
                addEnd(walk, result, inner.get(inner.size() - 1));
                continue;
            }
            int after = walk.wrapped(
                    corner.exit().t() >= 1
                            ? corner.exit().segment() + 1
                            : corner.exit().segment());
            int end = landEnd(walk, after, 1);
            if (end >= 0) {
                addEnd(walk, result, end);
            }
            int before = walk.wrapped(
                    corner.entry().t() <= 0
                            ? corner.entry().segment() - 1
                            : corner.entry().segment());
            int begin = landEnd(walk, before, -1);
            if (begin >= 0) {
                addStart(walk, result, begin);
            }
        }
        result.sort(Comparator.comparingDouble(
                corner -> corner.apex().segment() + corner.apex().t()));
        return result;
    }

    /** The last of the arcs on the circle that follow each other from a segment on; -1 if there is none. */
    private static int landEnd(Walk walk, int from, int step) {
        int found = -1;
        int index = from;
        for (int guard = 0;
                guard < walk.segments().size() && onCircle(walk.segments().get(index));
                guard++) {
            found = index;
            index = walk.wrapped(index + step);
        }
        return found;
    }

    /** Arcs on the circle within a corner that was gathered from the two blunt ends of a narrow land. */
    private static List<Integer> innerLand(Walk walk, Corner corner) {
        List<Integer> result = new ArrayList<>();
        int index = corner.entry().segment();
        double from = corner.entry().t();
        for (boolean more = true; more; index = walk.wrapped(index + 1)) {
            more = index != corner.exit().segment();
            double to = more ? 1 : corner.exit().t();
            if (to - from > 0.5 && onCircle(walk.segments().get(index))) {
                result.add(index);
            }
            from = 0;
        }
        return result;
    }

    private static void addStart(Walk walk, List<Corner> corners, int land) {
        addUnlessThere(walk, corners, new Place(walk.wrapped(land - 1), 1), new Place(land, 0));
    }

    private static void addEnd(Walk walk, List<Corner> corners, int land) {
        addUnlessThere(walk, corners, new Place(land, 1), new Place(walk.wrapped(land + 1), 0));
    }

    private static boolean onCircle(Segment segment) {
        return segment instanceof Segment.Arc arc
                && arc.centre().radius() < 1e-6
                && Math.abs(arc.radius() - Outlines.CIRCLE_RADIUS) < 1e-6;
    }

    private static void addUnlessThere(Walk walk, List<Corner> corners, Place end, Place next) {
        Point at = walk.at(next);
        boolean there = corners.stream()
                .anyMatch(corner -> walk.at(corner.entry()).distanceTo(at) < 1e-9
                        || walk.at(corner.apex()).distanceTo(at) < 1e-9
                        || walk.at(corner.exit()).distanceTo(at) < 1e-9);
        if (!there) {
            corners.add(new Corner(end, next, next, walk.turnAtEnd(end.segment())));
        }
    }

    private static Corner before(List<Corner> corners, int index) {
        return corners.get(Math.floorMod(index - 1, corners.size()));
    }

    /** Whether the outline rides on the circle all the way from one corner to the next. */
    private static boolean joined(Walk walk, Corner from, Corner to) {
        if (from == to) {
            return false;
        }
        double least =
                Math.min(walk.at(from.apex()).radius(), walk.at(to.apex()).radius()) - LAND_SAG;
        return walk.path(from.exit(), to.entry()).stream()
                .allMatch(segment -> segment.at(segment.nearest(Point.AXIS)).radius() >= least);
    }
}
