package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The part of an outline within a circle about the axis; where the circle cuts, it becomes the outline. */
final class DiscClip {
    private DiscClip() {}

    /** The clipped outline that holds the axis, anticlockwise; the segments themselves when the circle does not cut. */
    static List<Segment> clipped(List<Segment> segments, double radius) {
        List<List<Segment>> runs = runsWithin(segments, radius);
        if (runs.isEmpty()) {
            return circle(radius);
        }
        if (runs.size() == 1
                && runs.get(0).get(0).start().distanceTo(last(runs.get(0)).end()) < 1e-12) {
            return segments;
        }
        for (int i = 0; i < runs.size(); i++) {
            List<Segment> loop = loop(runs, i, radius);
            if (Containment.contains(loop, Point.AXIS)) {
                return loop;
            }
        }
        return segments;
    }

    private static List<Segment> circle(double radius) {
        return List.of(
                new Segment.Arc(Point.AXIS, radius, 0, Math.PI),
                new Segment.Arc(Point.AXIS, radius, Math.PI, Angles.FULL));
    }

    private static <T> T last(List<T> list) {
        return list.get(list.size() - 1);
    }

    /** Stretches of the outline inside the circle, each from where it enters to where it leaves. */
    private static List<List<Segment>> runsWithin(List<Segment> segments, double radius) {
        List<List<Segment>> runs = new ArrayList<>();
        boolean inside = false;
        for (Segment segment : segments) {
            double from = 0;
            double[] crossings = CircleCrossings.of(segment, Point.AXIS, radius);
            for (int k = 0; k <= crossings.length; k++) {
                double to = k < crossings.length ? crossings[k] : 1;
                if ((to - from) * segment.length() < 1e-13) {
                    continue;
                }
                boolean within = segment.at((from + to) / 2).radius() <= radius + 1e-13;
                if (within && !inside) {
                    runs.add(new ArrayList<>());
                }
                if (within) {
                    last(runs).add(from == 0 && to == 1 ? segment : segment.part(from, to));
                }
                inside = within;
                from = to;
            }
        }
        joinSeam(runs, inside);
        return runs;
    }

    private static void joinSeam(List<List<Segment>> runs, boolean insideAtEnd) {
        if (runs.size() > 1 && insideAtEnd) {
            List<Segment> seam = last(runs);
            if (seam.get(seam.size() - 1).end().distanceTo(runs.get(0).get(0).start()) < 1e-12) {
                seam.addAll(runs.remove(0));
            }
        }
    }

    /** From one run along the circle to the run that enters next, and so on back to the first. */
    private static List<Segment> loop(List<List<Segment>> runs, int first, double radius) {
        List<Segment> result = new ArrayList<>();
        List<Segment> run = runs.get(first);
        for (int guard = 0; guard < runs.size(); guard++) {
            result.addAll(run);
            double leaving = last(run).end().angle();
            List<Segment> next = runs.stream()
                    .min(Comparator.comparingDouble(
                            other -> Angles.positive(other.get(0).start().angle() - leaving)))
                    .orElseThrow();
            double sweep = Angles.positive(next.get(0).start().angle() - leaving);
            result.add(new Segment.Arc(Point.AXIS, radius, leaving, leaving + sweep));
            if (next == runs.get(first)) {
                break;
            }
            run = next;
        }
        return result;
    }
}
