package org.taperwright.mechanics.section;

import java.util.List;

/**
 * Whether a point lies inside a closed outline: winding number of the chords, corrected by the circular segments
 * between chord and arc. Exact for lines and arcs. Every chord ends where the next begins, to the last bit.
 */
final class Containment {
    private Containment() {}

    static boolean contains(List<Segment> segments, Point point) {
        int winding = 0;
        for (int k = 0; k < segments.size(); k++) {
            Segment segment = segments.get(k);
            Point next = segments.get((k + 1) % segments.size()).start();
            int pieces = Math.abs(segment.turn()) > Math.PI / 2 ? 4 : 1;
            Point from = segment.start();
            for (int i = 1; i <= pieces; i++) {
                Point to = i == pieces ? next : segment.at((double) i / pieces);
                winding += chord(from, to, point);
                if (segment instanceof Segment.Arc arc) {
                    winding += bow(arc, from, to, point);
                }
                from = to;
            }
        }
        return winding != 0;
    }

    /** Signed crossings of the ray from the point to the right. */
    private static int chord(Point from, Point to, Point point) {
        double side = side(from, to, point);
        if (from.y() <= point.y() && to.y() > point.y() && side > 0) {
            return 1;
        }
        if (from.y() > point.y() && to.y() <= point.y() && side < 0) {
            return -1;
        }
        return 0;
    }

    private static int bow(Segment.Arc arc, Point from, Point to, Point point) {
        if (point.distanceTo(arc.centre()) >= arc.radius()) {
            return 0;
        }
        double side = side(from, to, point);
        if (arc.turn() > 0) {
            return side < 0 ? 1 : 0;
        }
        return side > 0 ? -1 : 0;
    }

    /**
     * Positive left of the chord. A point on it is taken as if moved up, or right along an upright chord, by less than
     * any number, as the crossings of the ray are: symmetric sections often have the axis on a chord.
     */
    private static double side(Point from, Point to, Point point) {
        Point along = to.minus(from);
        double side = along.cross(point.minus(from));
        if (side != 0) {
            return side;
        }
        return along.x() != 0 ? along.x() : -along.y();
    }
}
