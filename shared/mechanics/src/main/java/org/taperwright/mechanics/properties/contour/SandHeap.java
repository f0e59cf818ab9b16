package org.taperwright.mechanics.properties.contour;

/**
 * Fully plastic torque by the sand-heap analogy, {@code T_p = 2 k int dist dA}, and the largest inscribed circle.
 * The volume is summed along the inward normals up to the medial axis: a boundary element ds with curvature c and ball
 * radius r holds {@code (r^2/2 - c r^3/3) ds}, the fan at a re-entrant corner {@code r^3/3 dtheta}.
 *
 * @param plasticTorque {@code T_p / (k d^3)}
 * @param inscribed diameter of the largest circle inside the outline, in d
 */
public record SandHeap(double plasticTorque, double inscribed) {

    /** The heap over a contour, to about 1e-6 of the whole. */
    public static SandHeap of(Contour contour) {
        return new Survey(contour).heap();
    }

    private static final class Survey {
        private static final int DEEPEST = 16;
        private static final int FORCED = 3;
        private static final double LONG = 0.05;
        // far below what is wanted: where the ball's other contact jumps, two estimates may agree by chance
        private static final double SHARE = 1e-10;
        private static final double SHARE_OF_MANY = 1e-9;
        private static final int MANY = 100;
        /** How far from the ends of a piece the balls are taken; at a corner itself they have no size. */
        private static final double END = 1e-5;

        private static final double GOLDEN = 0.6180339887498949;

        private final Contour contour;
        private final TangentBalls balls;
        private final double share;
        private double largest;
        private int largestPiece;
        private double largestFan;
        private double largestFrom;
        private double largestTo;

        private Survey(Contour contour) {
            this.contour = contour;
            balls = new TangentBalls(contour);
            share = contour.size() < MANY ? SHARE : SHARE_OF_MANY;
        }

        private SandHeap heap() {
            double volume = 0;
            for (int i = 0; i < contour.size(); i++) {
                volume += along(i, 0, contour.length(i));
                double turn = contour.turnAfter(i);
                if (turn < 0) {
                    volume += along(i, turn, -turn);
                }
            }
            return new SandHeap(2 * volume, 2 * polish());
        }

        /** Integral over a piece (fan 0) or over the fan of normals at its end (fan the negative turn). */
        private double along(int piece, double fan, double extent) {
            double first = slice(piece, fan, END, 0.5);
            double middle = slice(piece, fan, 0.5, 0.5);
            double last = slice(piece, fan, 1 - END, 0.5);
            return extent * refine(new Stretch(piece, fan, 0, 1, first, middle, last), DEEPEST, share / extent);
        }

        private double refine(Stretch whole, int depth, double allowed) {
            double quarter = (whole.to - whole.from) / 4;
            double middle = whole.from + 2 * quarter;
            double before = slice(whole.piece, whole.fan, whole.from + quarter, quarter);
            double after = slice(whole.piece, whole.fan, whole.to - quarter, quarter);
            Stretch left =
                    new Stretch(whole.piece, whole.fan, whole.from, middle, whole.atFrom, before, whole.atMiddle);
            Stretch right = new Stretch(whole.piece, whole.fan, middle, whole.to, whole.atMiddle, after, whole.atTo);
            double halves = left.simpson() + right.simpson();
            double gap = halves - whole.simpson();
            boolean forced = depth > DEEPEST - FORCED && allowed < share / LONG;
            if (!forced && (depth == 0 || Math.abs(gap) < allowed)) {
                return halves + gap / 15;
            }
            return refine(left, depth - 1, allowed / 2) + refine(right, depth - 1, allowed / 2);
        }

        private double slice(int piece, double fan, double t, double half) {
            BoundaryPoint p = normal(piece, fan, t);
            double r = balls.radius(p);
            if (r > largest) {
                largest = r;
                largestPiece = piece;
                largestFan = fan;
                largestFrom = Math.max(0, t - 2 * half);
                largestTo = Math.min(1, t + 2 * half);
            }
            return fan == 0 ? r * r / 2 - p.curvature() * r * r * r / 3 : r * r * r / 3;
        }

        private BoundaryPoint normal(int piece, double fan, double t) {
            if (fan == 0) {
                return contour.at(piece, t);
            }
            BoundaryPoint end = contour.at(piece, 1);
            double cos = Math.cos(fan * t);
            double sin = Math.sin(fan * t);
            double nx = end.normalX() * cos - end.normalY() * sin;
            double ny = end.normalX() * sin + end.normalY() * cos;
            return new BoundaryPoint(piece, 1, end.x(), end.y(), nx, ny, 0);
        }

        /** Golden-section search for the largest ball around the largest one met. */
        private double polish() {
            double from = largestFrom;
            double to = largestTo;
            double low = to - GOLDEN * (to - from);
            double high = from + GOLDEN * (to - from);
            double atLow = at(low);
            double atHigh = at(high);
            double best = largest;
            for (int k = 0; k < 55; k++) {
                best = Math.max(best, Math.max(atLow, atHigh));
                if (atLow > atHigh) {
                    to = high;
                    high = low;
                    atHigh = atLow;
                    low = to - GOLDEN * (to - from);
                    atLow = at(low);
                } else {
                    from = low;
                    low = high;
                    atLow = atHigh;
                    high = from + GOLDEN * (to - from);
                    atHigh = at(high);
                }
            }
            return best;
        }

        private double at(double t) {
            return balls.radius(normal(largestPiece, largestFan, t));
        }
    }

    /** Part of a piece with the values at its ends and middle. */
    private record Stretch(int piece, double fan, double from, double to, double atFrom, double atMiddle, double atTo) {
        double simpson() {
            return (to - from) * (atFrom + 4 * atMiddle + atTo) / 6;
        }
    }
}
