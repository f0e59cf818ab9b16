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

    private final List<Point> points;
    private final double tolerance;
    private final boolean[] kept;

    private PlainOutline(List<Point> points, double tolerance) {
        this.points = points;
        this.tolerance = tolerance;
        kept = new boolean[points.size()];
    }

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
        return corners(contour) <= mostCorners
                ? contour
                : Contour.of(polygon(contour, mostCorners, FIRST_TOLERANCE, 0.2));
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
        double tolerance = firstTolerance;
        List<Point> fewer = new PlainOutline(points, tolerance).fewer();
        while (fewer.size() > mostCorners) {
            tolerance *= 1.5;
            fewer = new PlainOutline(points, tolerance).fewer();
        }
        List<Segment> sides = new ArrayList<>();
        for (int i = 0; i < fewer.size(); i++) {
            sides.add(new Segment.Line(fewer.get(i), fewer.get((i + 1) % fewer.size())));
        }
        return new Outline(sides);
    }

    private List<Point> fewer() {
        int half = points.size() / 2;
        kept[0] = true;
        kept[half] = true;
        keep(0, half);
        keep(half, points.size());
        List<Point> result = new ArrayList<>();
        for (int i = 0; i < kept.length; i++) {
            if (kept[i]) {
                result.add(points.get(i));
            }
        }
        return result;
    }

    private void keep(int from, int to) {
        Point a = points.get(from);
        Point b = points.get(to % points.size());
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double square = dx * dx + dy * dy;
        int farthest = -1;
        double most = tolerance * tolerance;
        for (int i = from + 1; i < to; i++) {
            double px = points.get(i).x() - a.x();
            double py = points.get(i).y() - a.y();
            double t = square == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / square));
            double away = (px - t * dx) * (px - t * dx) + (py - t * dy) * (py - t * dy);
            if (away > most) {
                most = away;
                farthest = i;
            }
        }
        if (farthest > 0) {
            kept[farthest] = true;
            keep(from, farthest);
            keep(farthest, to);
        }
    }
}
