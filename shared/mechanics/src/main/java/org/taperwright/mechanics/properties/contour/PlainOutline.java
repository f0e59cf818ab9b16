package org.taperwright.mechanics.properties.contour;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Segment;

/**
 * An outline with fewer corners, for fields that the finest notches hardly change: the polygon through those of its
 * points that are needed to stay within a tolerance (D. Douglas and T. Peucker, 1973).
 */
public final class PlainOutline {
    private static final double FIRST_TOLERANCE = 5e-4;
    /** In diameters; area and heap are the outline's own to about a ten-thousandth at this. */
    private static final double FINE_TOLERANCE = 2e-5;

    private PlainOutline() {}

    /** Number of corners, sharp or re-entrant. */
    public static int corners(Contour contour) {
        int count = 0;
        for (int i = 0; i < contour.size(); i++) {
            if (Math.abs(contour.turnAfter(i)) > Contour.CORNER) {
                count++;
            }
        }
        return count;
    }

    /** The contour itself, or where it has more corners than asked for a polygon that has not. */
    public static Contour of(Contour contour, int mostCorners) {
        return corners(contour) <= mostCorners ? contour : polygon(contour, mostCorners);
    }

    /** The nearest polygon of no more corners than asked for. */
    public static Contour polygon(Contour contour, int mostCorners) {
        return Contour.of(polygon(contour, mostCorners, FIRST_TOLERANCE, 0.2));
    }

    /** The outline itself, or where it has more pieces than asked for the nearest polygon that has not. */
    public static Outline ofPieces(Outline outline, int mostPieces) {
        return outline.segments().size() <= mostPieces
                ? outline
                : polygon(Contour.of(outline), mostPieces, FINE_TOLERANCE, 0.04);
    }

    /** Through points of the contour, an arc's at even steps of its sweep. */
    private static Outline polygon(Contour contour, int mostCorners, double firstTolerance, double sweep) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < contour.size(); i++) {
            int parts = Math.max(1, (int) Math.ceil(Math.abs(contour.sweep(i)) / sweep));
            for (int k = 0; k < parts; k++) {
                BoundaryPoint p = contour.at(i, (double) k / parts);
                points.add(new Point(p.x(), p.y()));
            }
        }
        double[] need = new Needs(points, firstTolerance).all();
        double tolerance = firstTolerance;
        while (above(need, tolerance) > mostCorners) {
            tolerance *= 1.5;
        }
        List<Point> fewer = new ArrayList<>();
        for (int i = 0; i < need.length; i++) {
            if (need[i] > tolerance) {
                fewer.add(points.get(i));
            }
        }
        List<Segment> sides = new ArrayList<>();
        for (int i = 0; i < fewer.size(); i++) {
            sides.add(new Segment.Line(fewer.get(i), fewer.get((i + 1) % fewer.size())));
        }
        return new Outline(sides);
    }

    private static int above(double[] need, double tolerance) {
        int count = 0;
        for (double each : need) {
            count += each > tolerance ? 1 : 0;
        }
        return count;
    }

    /** For each point the tolerance below which it is needed, all in one walk; 0 for what the least tolerance leaves out. */
    private static final class Needs {
        private final double[] x;
        private final double[] y;
        private final double least;
        private final double[] need;

        Needs(List<Point> points, double least) {
            x = points.stream().mapToDouble(Point::x).toArray();
            y = points.stream().mapToDouble(Point::y).toArray();
            this.least = least;
            need = new double[x.length];
        }

        double[] all() {
            int half = x.length / 2;
            need[0] = Double.POSITIVE_INFINITY;
            need[half] = Double.POSITIVE_INFINITY;
            between(0, half, Double.POSITIVE_INFINITY);
            between(half, x.length, Double.POSITIVE_INFINITY);
            return need;
        }

        private void between(int from, int to, double parent) {
            int last = to % x.length;
            double dx = x[last] - x[from];
            double dy = y[last] - y[from];
            double square = dx * dx + dy * dy;
            int farthest = -1;
            double most = least * least;
            for (int i = from + 1; i < to; i++) {
                double px = x[i] - x[from];
                double py = y[i] - y[from];
                double t = square == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / square));
                double away = (px - t * dx) * (px - t * dx) + (py - t * dy) * (py - t * dy);
                if (away > most) {
                    most = away;
                    farthest = i;
                }
            }
            if (farthest > 0) {
                // a point is only looked for where those before it are kept
                need[farthest] = Math.min(parent, Math.sqrt(most));
                between(from, farthest, need[farthest]);
                between(farthest, to, need[farthest]);
            }
        }
    }
}
