package org.taperwright.comparer.ui;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds room for labels beside points: each label takes the nearest of several places around its point where it covers
 * neither another label nor a point nor leaves the figure; where there is no such place, the one that covers least.
 */
final class LabelPlaces {
    private static final double[] DISTANCES = {10, 18, 28, 40, 56, 74, 96};
    private static final int DIRECTIONS = 16;
    private static final double GRID = 8;

    private final Rectangle2D figure;
    private final List<Rectangle2D> taken = new ArrayList<>();

    /**
     * Begins with the points as taken.
     *
     * @param figure where labels may stand
     * @param points the points, none of which may be covered
     * @param reach half the side of the square a point takes up
     */
    LabelPlaces(Rectangle2D figure, List<Point2D> points, double reach) {
        this.figure = figure;
        points.forEach(point ->
                taken.add(new Rectangle2D.Double(point.getX() - reach, point.getY() - reach, 2 * reach, 2 * reach)));
    }

    /** The place of a label of a size beside a point; it counts as taken from then on. */
    Rectangle2D place(Point2D point, double width, double height) {
        List<Rectangle2D> candidates = new ArrayList<>();
        for (double distance : DISTANCES) {
            for (int i = 0; i < DIRECTIONS; i++) {
                candidates.add(beside(point, 2 * Math.PI * i / DIRECTIONS, distance, width, height));
            }
        }
        Best best = new Best();
        if (!best.look(candidates)) {
            best.look(anywhere(point, width, height));
        }
        taken.add(best.place);
        return best.place;
    }

    /** The place that covers least of all looked at. */
    private final class Best {
        private Rectangle2D place = new Rectangle2D.Double();
        private double least = Double.POSITIVE_INFINITY;

        /** Looks at places in turn; whether one of them covers nothing. */
        boolean look(List<Rectangle2D> candidates) {
            for (Rectangle2D candidate : candidates) {
                double covered = covered(candidate);
                if (covered < least) {
                    least = covered;
                    place = candidate;
                }
                if (covered == 0) {
                    return true;
                }
            }
            return false;
        }
    }

    /** Places all over the figure, the nearest to a point first: for labels that find no room beside it. */
    private List<Rectangle2D> anywhere(Point2D point, double width, double height) {
        List<Rectangle2D> places = new ArrayList<>();
        for (double x = figure.getX(); x + width <= figure.getMaxX(); x += GRID) {
            for (double y = figure.getY(); y + height <= figure.getMaxY(); y += GRID) {
                places.add(new Rectangle2D.Double(x, y, width, height));
            }
        }
        places.sort(Comparator.comparingDouble(place -> point.distanceSq(place.getCenterX(), place.getCenterY())));
        return places;
    }

    /** A label whose nearest edge stands at a distance from the point in a direction; 0 is to the right. */
    private static Rectangle2D beside(Point2D point, double angle, double distance, double width, double height) {
        double x = point.getX() + Math.cos(angle) * distance;
        double y = point.getY() + Math.sin(angle) * distance;
        double left = x - width / 2 * (1 - Math.cos(angle));
        double top = y - height / 2 * (1 - Math.sin(angle));
        return new Rectangle2D.Double(left, top, width, height);
    }

    private double covered(Rectangle2D label) {
        Rectangle2D inside = label.createIntersection(figure);
        double area = label.getWidth() * label.getHeight();
        double outside = area - Math.max(0, inside.getWidth()) * Math.max(0, inside.getHeight());
        double covered = 4 * Math.max(0, outside);
        for (Rectangle2D other : taken) {
            if (other.intersects(label)) {
                Rectangle2D both = other.createIntersection(label);
                covered += both.getWidth() * both.getHeight();
            }
        }
        return covered;
    }
}
