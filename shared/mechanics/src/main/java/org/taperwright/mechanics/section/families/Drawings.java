package org.taperwright.mechanics.section.families;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Outlines;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Segment;
import org.taperwright.mechanics.work.Fault;

/** What several families share in drawing their outlines. */
final class Drawings {
    private Drawings() {}

    static OutlineResult drawn(List<Segment> segments) {
        return new OutlineResult.Drawn(Outlines.normalised(segments), List.of());
    }

    static OutlineResult refused(String parameter, String what, String expected) {
        return new OutlineResult.Refused(List.of(Fault.impossible("parameters." + parameter, what, expected)));
    }

    /** A closed run through points, each side bowed outwards by one sagitta. */
    static OutlineResult polygon(List<Point> corners, double sagitta) {
        List<Segment> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(Segment.bowed(corners.get(i), corners.get((i + 1) % corners.size()), sagitta));
        }
        return drawn(sides);
    }

    /** A regular polygon on the circle of diameter 1. */
    static OutlineResult regular(int corners, double firstDeg, double sagitta) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            points.add(Point.polar(Outlines.CIRCLE_RADIUS, Math.toRadians(firstDeg + i * 360.0 / corners)));
        }
        return polygon(points, sagitta);
    }
}
