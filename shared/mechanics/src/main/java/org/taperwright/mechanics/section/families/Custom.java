package org.taperwright.mechanics.section.families;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Outlines;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Segment;
import org.taperwright.mechanics.work.Fault;

/**
 * A closed polyline of any points about the axis at (0, 0), in any unit: scaled so that the circumscribed circle about the
 * axis has diameter 1. Mended with a remark: points that repeat, a closing point given twice, a clockwise run. Refused:
 * too few or too many points, numbers that are none; what crosses itself or misses the axis is refused by the last check
 * that every outline passes.
 */
public final class Custom implements SectionFamily {
    private static final int MOST = 10_000;
    /** Nearer neighbours than this share of the greatest distance from the axis are one point. */
    private static final double SAME = 1e-6;

    @Override
    public String id() {
        return "custom";
    }

    @Override
    public String label() {
        return "Custom outline";
    }

    @Override
    public String explanation() {
        return "Any closed outline of points around the axis, measured or drawn.";
    }

    @Override
    public List<FamilyParameter> parameters() {
        return List.of();
    }

    @Override
    public boolean takesPoints() {
        return true;
    }

    @Override
    public OutlineResult outline(SectionShape shape) {
        List<Point> given = shape.points();
        for (int i = 0; i < given.size(); i++) {
            if (!Double.isFinite(given.get(i).radius())) {
                return refused(
                        "points[" + i + "]", "the point has a coordinate that is no finite number", "two numbers");
            }
        }
        if (given.size() > MOST) {
            return refused("points", given.size() + " points", "at most " + MOST + " points; leave out some");
        }
        List<Fault> remarks = new ArrayList<>();
        List<Point> points = distinct(withinUnit(given), remarks);
        if (points.size() < 3) {
            return refused("points", points.size() + " different points", "at least 3 points around the axis");
        }
        List<Segment> sides = closed(points);
        if (Outlines.area(sides) < 0) {
            remarks.add(Fault.unusual(
                    "points", "the points run clockwise", "an anticlockwise outline; they are taken in reverse"));
            java.util.Collections.reverse(points);
            sides = closed(points);
        }
        return new OutlineResult.Drawn(Outlines.normalised(sides), remarks);
    }

    private static OutlineResult refused(String where, String what, String expected) {
        return new OutlineResult.Refused(List.of(Fault.impossible(where, what, expected)));
    }

    /** Divided by the greatest distance from the axis, so that no product of coordinates overflows or vanishes. */
    private static List<Point> withinUnit(List<Point> given) {
        double most = given.stream().mapToDouble(Point::radius).max().orElse(0);
        return most == 0
                ? given
                : given.stream()
                        .map(point -> new Point(point.x() / most, point.y() / most))
                        .toList();
    }

    private static List<Point> distinct(List<Point> given, List<Fault> remarks) {
        List<Point> result = new ArrayList<>();
        for (Point point : given) {
            if (result.isEmpty() || point.distanceTo(result.get(result.size() - 1)) > SAME) {
                result.add(point);
            }
        }
        if (result.size() < given.size()) {
            remarks.add(Fault.unusual(
                    "points",
                    given.size() - result.size() + " points repeat the one before",
                    "different points; the repeated ones are left out"));
        }
        if (result.size() > 1 && result.get(0).distanceTo(result.get(result.size() - 1)) <= SAME) {
            result.remove(result.size() - 1);
            remarks.add(Fault.unusual(
                    "points", "the last point repeats the first", "the closing point once only; the last is left out"));
        }
        return result;
    }

    private static List<Segment> closed(List<Point> points) {
        List<Segment> sides = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            sides.add(new Segment.Line(points.get(i), points.get((i + 1) % points.size())));
        }
        return sides;
    }
}
