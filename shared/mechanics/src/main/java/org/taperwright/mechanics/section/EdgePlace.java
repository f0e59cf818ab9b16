package org.taperwright.mechanics.section;

import java.util.ArrayList;
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
        List<Corner> corners = Corners.convex(segments).stream()
                .filter(corner -> walk.at(corner.apex()).radius() >= Outlines.CIRCLE_RADIUS - ON_CIRCLE)
                .toList();
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
