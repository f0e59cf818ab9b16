package org.taperwright.mechanics.properties.contour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Segment;

/**
 * An outline whose sharp re-entrant corners are filled by arcs that touch it on both sides, as a ball rolled into them
 * would. Where there is no room for the radius a smaller one is taken.
 */
public final class FilletedOutline {
    private static final int HALVINGS = 5;
    private static final int STEPS = 24;

    private final Contour contour;

    private FilletedOutline(Contour contour) {
        this.contour = contour;
    }

    /** Whether a contour has a sharp re-entrant corner. */
    public static boolean needed(Contour contour) {
        for (int i = 0; i < contour.size(); i++) {
            if (contour.turnAfter(i) < -Contour.CORNER) {
                return true;
            }
        }
        return false;
    }

    /** The contour with fillets of a radius, in diameters, at its sharp re-entrant corners. */
    public static Outline of(Contour contour, double radius) {
        return new FilletedOutline(contour).outline(radius);
    }

    private Outline outline(double radius) {
        List<Fillet> fillets = new ArrayList<>();
        for (int i = 0; i < contour.size(); i++) {
            if (contour.turnAfter(i) < -Contour.CORNER) {
                addFillet(fillets, i, radius);
            }
        }
        if (fillets.isEmpty()) {
            return new Outline(stretch(0, contour.perimeter()));
        }
        List<Segment> segments = new ArrayList<>();
        for (int k = 0; k < fillets.size(); k++) {
            Fillet fillet = fillets.get(k);
            segments.add(fillet.arc);
            boolean last = k + 1 == fillets.size();
            double to = last ? fillets.get(0).from + contour.perimeter() : fillets.get(k + 1).from;
            segments.addAll(stretch(fillet.to, to));
        }
        return new Outline(segments);
    }

    private void addFillet(List<Fillet> fillets, int piece, double radius) {
        double corner = contour.begins(piece + 1);
        double back = roomBefore(piece);
        double ahead = roomAfter(piece);
        double r = radius;
        for (int k = 0; k < HALVINGS; k++) {
            Optional<Fillet> fillet = roll(corner, back, ahead, r);
            if (fillet.isPresent()) {
                fillets.add(fillet.get());
                return;
            }
            r /= 2;
        }
    }

    /** Half the way to the corner before, so that two fillets do not meet. */
    private double roomBefore(int piece) {
        double room = contour.length(piece);
        int i = piece;
        for (int k = 1; k < contour.size(); k++) {
            i = i == 0 ? contour.size() - 1 : i - 1;
            if (Math.abs(contour.turnAfter(i)) > Contour.CORNER) {
                break;
            }
            room += contour.length(i);
        }
        return 0.49 * room;
    }

    private double roomAfter(int piece) {
        int i = contour.next(piece);
        double room = contour.length(i);
        for (int k = 1; k < contour.size() && Math.abs(contour.turnAfter(i)) <= Contour.CORNER; k++) {
            i = contour.next(i);
            room += contour.length(i);
        }
        return 0.49 * room;
    }

    /** Moves the ball's first contact back from the corner until the ball just clears the far side. */
    private Optional<Fillet> roll(double corner, double back, double ahead, double radius) {
        double near = 0;
        double far = -1;
        for (int k = 1; k <= STEPS && far < 0; k++) {
            double at = back * k / STEPS;
            if (clearance(corner, at, ahead, radius) >= 0) {
                far = at;
            } else {
                near = at;
            }
        }
        if (far < 0) {
            return Optional.empty();
        }
        for (int k = 0; k < 32; k++) {
            double middle = (near + far) / 2;
            if (clearance(corner, middle, ahead, radius) >= 0) {
                far = middle;
            } else {
                near = middle;
            }
        }
        double from = corner - far;
        double to = corner + nearest(corner, far, ahead, radius);
        return to >= corner + ahead * 0.999 ? Optional.empty() : Optional.of(fillet(from, to, radius));
    }

    private Fillet fillet(double from, double to, double radius) {
        BoundaryPoint a = contour.along(from);
        BoundaryPoint b = contour.along(to);
        double cx = a.x() - radius * a.normalX();
        double cy = a.y() - radius * a.normalY();
        double start = Math.atan2(a.y() - cy, a.x() - cx);
        double end = Math.atan2(b.y() - cy, b.x() - cx);
        double sweep = end - start;
        sweep -= 2 * Math.PI * Math.ceil(sweep / (2 * Math.PI));
        return new Fillet(from, to, new Segment.Arc(new Point(cx, cy), radius, start, start + sweep));
    }

    private double clearance(double corner, double back, double ahead, double radius) {
        BoundaryPoint foot = contour.along(corner + nearest(corner, back, ahead, radius));
        BoundaryPoint p = contour.along(corner - back);
        double cx = p.x() - radius * p.normalX();
        double cy = p.y() - radius * p.normalY();
        return Math.hypot(foot.x() - cx, foot.y() - cy) - radius;
    }

    /** How far beyond the corner the ball's nearest point lies. */
    private double nearest(double corner, double back, double ahead, double radius) {
        BoundaryPoint p = contour.along(corner - back);
        double cx = p.x() - radius * p.normalX();
        double cy = p.y() - radius * p.normalY();
        double best = 0;
        double least = Double.MAX_VALUE;
        for (int k = 0; k <= STEPS; k++) {
            double at = ahead * k / STEPS;
            double square = square(corner + at, cx, cy);
            if (square < least) {
                least = square;
                best = at;
            }
        }
        double low = Math.max(0, best - ahead / STEPS);
        double high = Math.min(ahead, best + ahead / STEPS);
        for (int k = 0; k < 28; k++) {
            double a = low + (high - low) * 0.381966;
            double b = low + (high - low) * 0.618034;
            if (square(corner + a, cx, cy) < square(corner + b, cx, cy)) {
                high = b;
            } else {
                low = a;
            }
        }
        return (low + high) / 2;
    }

    private double square(double along, double cx, double cy) {
        BoundaryPoint q = contour.along(along);
        return (q.x() - cx) * (q.x() - cx) + (q.y() - cy) * (q.y() - cy);
    }

    private List<Segment> stretch(double from, double to) {
        List<Segment> segments = new ArrayList<>();
        double length = contour.perimeter();
        for (int round = 0; round < 2; round++) {
            for (int i = 0; i < contour.size(); i++) {
                double begin = contour.begins(i) + round * length;
                double low = Math.max(from, begin);
                double high = Math.min(to, begin + contour.length(i));
                if (high - low > 1e-12) {
                    segments.add(contour.part(
                            i, (low - begin) / contour.length(i), (high - begin) / contour.length(i)));
                }
            }
        }
        return segments;
    }

    private record Fillet(double from, double to, Segment arc) {}
}
