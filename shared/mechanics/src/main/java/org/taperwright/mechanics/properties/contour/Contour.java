package org.taperwright.mechanics.properties.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Segment;

/**
 * An outline laid out in flat arrays for fast evaluation: straight and circular pieces run through anticlockwise, with
 * the material on the left. Pieces too short to matter are dropped; arcs flatter than any file could hold are straight.
 */
public final class Contour {
    /** Turn at a joint, rad, above which it is a corner and not part of a drawn curve. */
    public static final double CORNER = Math.toRadians(15);

    private static final double NEGLIGIBLE = 1e-10;
    private static final double FLAT_RADIUS = 1e7;

    private final double[] startX;
    private final double[] startY;
    private final double[] deltaX;
    private final double[] deltaY;
    private final double[] centreX;
    private final double[] centreY;
    private final double[] radius;
    private final double[] fromAngle;
    private final double[] sweep;
    private final double[] length;
    private final double[] begins;

    private Contour(List<Segment> segments) {
        int n = segments.size();
        startX = new double[n];
        startY = new double[n];
        deltaX = new double[n];
        deltaY = new double[n];
        centreX = new double[n];
        centreY = new double[n];
        radius = new double[n];
        fromAngle = new double[n];
        sweep = new double[n];
        length = new double[n];
        begins = new double[n + 1];
        for (int i = 0; i < n; i++) {
            lay(i, segments.get(i));
            begins[i + 1] = begins[i] + length[i];
        }
    }

    /** The contour of an outline. */
    public static Contour of(Outline outline) {
        List<Segment> kept = new ArrayList<>(outline.segments().size());
        for (Segment segment : outline.segments()) {
            if (segment.length() > NEGLIGIBLE) {
                kept.add(segment);
            }
        }
        return new Contour(kept);
    }

    private void lay(int i, Segment segment) {
        Point start = segment.start();
        Point end = segment.end();
        startX[i] = start.x();
        startY[i] = start.y();
        deltaX[i] = end.x() - start.x();
        deltaY[i] = end.y() - start.y();
        length[i] = segment.length();
        if (segment instanceof Segment.Arc arc && arc.radius() < FLAT_RADIUS) {
            centreX[i] = arc.centre().x();
            centreY[i] = arc.centre().y();
            radius[i] = arc.radius();
            fromAngle[i] = arc.fromAngle();
            sweep[i] = arc.toAngle() - arc.fromAngle();
        }
    }

    /** Number of pieces. */
    public int size() {
        return length.length;
    }

    /** Whether a piece is circular. */
    public boolean circular(int piece) {
        return radius[piece] > 0;
    }

    /** Length of a piece. */
    public double length(int piece) {
        return length[piece];
    }

    /** Length of the whole contour. */
    public double perimeter() {
        return begins[size()];
    }

    /** Distance along the contour at which a piece begins. */
    public double begins(int piece) {
        return begins[piece];
    }

    /** The point at a distance along the contour, which may run past either end of it. */
    public BoundaryPoint along(double distance) {
        double place = distance - perimeter() * Math.floor(distance / perimeter());
        int found = Arrays.binarySearch(begins, place);
        int piece = Math.min(found >= 0 ? found : -found - 2, size() - 1);
        return at(piece, Math.min(1, (place - begins[piece]) / length[piece]));
    }

    /** The piece after this one. */
    public int next(int piece) {
        return piece + 1 == size() ? 0 : piece + 1;
    }

    /** First point of a piece, x. */
    public double startX(int piece) {
        return startX[piece];
    }

    /** First point of a piece, y. */
    public double startY(int piece) {
        return startY[piece];
    }

    /** Chord of a piece, x. */
    public double deltaX(int piece) {
        return deltaX[piece];
    }

    /** Chord of a piece, y. */
    public double deltaY(int piece) {
        return deltaY[piece];
    }

    /** Centre of a circular piece, x. */
    public double centreX(int piece) {
        return centreX[piece];
    }

    /** Centre of a circular piece, y. */
    public double centreY(int piece) {
        return centreY[piece];
    }

    /** Radius of a circular piece; 0 for a straight one. */
    public double radius(int piece) {
        return radius[piece];
    }

    /** Angle at which a circular piece begins, rad. */
    public double fromAngle(int piece) {
        return fromAngle[piece];
    }

    /** Signed angle that a circular piece runs through, rad; negative where the material is concave. */
    public double sweep(int piece) {
        return sweep[piece];
    }

    /** Whether a circular piece runs through the direction of an angle seen from its centre. */
    public boolean covers(int piece, double angle) {
        double turn = 2 * Math.PI;
        double ahead = (angle - fromAngle[piece]) * Math.signum(sweep[piece]);
        ahead -= turn * Math.floor(ahead / turn);
        return ahead <= Math.abs(sweep[piece]);
    }

    /** The point at parameter t of a piece. */
    public BoundaryPoint at(int piece, double t) {
        if (radius[piece] == 0) {
            double dx = deltaX[piece];
            double dy = deltaY[piece];
            double l = length[piece];
            return new BoundaryPoint(piece, t, startX[piece] + t * dx, startY[piece] + t * dy, -dy / l, dx / l, 0);
        }
        double angle = fromAngle[piece] + t * sweep[piece];
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double sense = Math.signum(sweep[piece]);
        double r = radius[piece];
        return new BoundaryPoint(
                piece, t, centreX[piece] + r * cos, centreY[piece] + r * sin, -sense * cos, -sense * sin, sense / r);
    }

    /** Angle by which the direction of travel turns where a piece meets the next, rad; positive at a convex corner. */
    public double turnAfter(int piece) {
        BoundaryPoint end = at(piece, 1);
        BoundaryPoint start = at(next(piece), 0);
        double cross = end.normalX() * start.normalY() - end.normalY() * start.normalX();
        double dot = end.normalX() * start.normalX() + end.normalY() * start.normalY();
        return Math.atan2(cross, dot);
    }

    /** Whether it has a sharp re-entrant corner. */
    public boolean reentrant() {
        for (int i = 0; i < size(); i++) {
            if (turnAfter(i) < -CORNER) {
                return true;
            }
        }
        return false;
    }
}
