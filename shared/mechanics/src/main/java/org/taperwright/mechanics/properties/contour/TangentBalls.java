package org.taperwright.mechanics.properties.contour;

/**
 * The largest balls inside a section that touch its outline at given points. The ball that touches at p with inward
 * normal n has the radius {@code min over q of |q - p|^2 / (2 n . (q - p))}, q on the outline; the minimum over a
 * straight or circular piece is known in closed form. Its centre lies on the medial axis. Remembers where the last ball
 * touched, because the next one is likely to touch nearby; not safe for use by two threads.
 */
public final class TangentBalls {
    private static final int BLOCK = 12;
    private static final double LARGEST = 1.0;
    private static final double TOUCHING = 1e-14;
    /** Rounding of the squares and products in {@link Touch#tryArc}, as a share of the arc's radius or its square. */
    private static final double ROUNDING = 1e-14;

    private final Contour contour;
    private final int blocks;
    private final double[] blockX;
    private final double[] blockY;
    private final double[] blockReach;
    private int lastTouched;

    public TangentBalls(Contour contour) {
        this.contour = contour;
        blocks = (contour.size() + BLOCK - 1) / BLOCK;
        blockX = new double[blocks];
        blockY = new double[blocks];
        blockReach = new double[blocks];
        for (int b = 0; b < blocks; b++) {
            bound(b);
        }
    }

    private void bound(int b) {
        int from = b * BLOCK;
        int to = Math.min(contour.size(), from + BLOCK);
        BoundaryPoint middle = contour.at((from + to) / 2, 0);
        blockX[b] = middle.x();
        blockY[b] = middle.y();
        for (int i = from; i < to; i++) {
            double reach = Math.hypot(contour.startX(i) - middle.x(), contour.startY(i) - middle.y());
            blockReach[b] = Math.max(blockReach[b], reach + contour.length(i));
        }
    }

    /** Radius of the largest inner ball that touches at a point. */
    public double radius(BoundaryPoint p) {
        double focal = p.curvature() > 0 ? Math.min(LARGEST, 1 / p.curvature()) : LARGEST;
        return search(p, focal, 0);
    }

    /**
     * Half the thickness of the material at a point: as {@link #radius}, but only what lies at more than 30 degrees
     * above the tangent counts, so that blunt corners nearby and the joints of a drawn curve do not.
     */
    public double halfThickness(BoundaryPoint p) {
        return search(p, LARGEST, 0.5);
    }

    private double search(BoundaryPoint p, double bound, double leastSine) {
        Touch touch = new Touch(p, bound, leastSine);
        int first = lastTouched;
        tryBlock(touch, first);
        int own = p.piece() / BLOCK;
        for (int k = 0; k < blocks; k++) {
            int b = own + k < blocks ? own + k : own + k - blocks;
            if (b != first) {
                tryBlock(touch, b);
            }
        }
        return touch.radius;
    }

    private void tryBlock(Touch touch, int b) {
        if (touch.reaches(blockX[b], blockY[b], blockReach[b])) {
            double before = touch.radius;
            int to = Math.min(contour.size(), (b + 1) * BLOCK);
            for (int i = b * BLOCK; i < to; i++) {
                touch.tryPiece(contour, i);
            }
            if (touch.radius < before) {
                lastTouched = b;
            }
        }
    }

    private static final class Touch {
        private final double px;
        private final double py;
        private final double nx;
        private final double ny;
        private final int own;
        private final double leastSine;
        private double radius;

        private Touch(BoundaryPoint p, double bound, double leastSine) {
            px = p.x();
            py = p.y();
            nx = p.normalX();
            ny = p.normalY();
            own = p.piece();
            this.leastSine = leastSine;
            radius = bound;
        }

        private boolean reaches(double x, double y, double reach) {
            double dx = px + radius * nx - x;
            double dy = py + radius * ny - y;
            double sum = radius + reach;
            return dx * dx + dy * dy <= sum * sum;
        }

        private void tryPiece(Contour contour, int i) {
            tryPoint(contour.startX(i), contour.startY(i));
            if (contour.circular(i)) {
                tryArc(contour, i);
            } else if (i != own) {
                tryLine(contour, i);
            }
        }

        private void tryPoint(double qx, double qy) {
            double dx = qx - px;
            double dy = qy - py;
            double height = nx * dx + ny * dy;
            double square = dx * dx + dy * dy;
            if (height > 0 && square > TOUCHING && height * height > leastSine * leastSine * square) {
                radius = Math.min(radius, square / (2 * height));
            }
        }

        private void tryLine(Contour contour, int i) {
            double l = contour.length(i);
            double tx = contour.deltaX(i) / l;
            double ty = contour.deltaY(i) / l;
            double wx = px - contour.startX(i);
            double wy = py - contour.startY(i);
            double depth = tx * wy - ty * wx;
            double facing = 1 - (tx * ny - ty * nx);
            if (depth <= TOUCHING || depth >= radius * facing) {
                return;
            }
            double r = depth / facing;
            double along = (wx + r * nx) * tx + (wy + r * ny) * ty;
            if (along >= 0 && along <= l && facing >= 2 * leastSine * leastSine) {
                radius = r;
            }
        }

        private void tryArc(Contour contour, int i) {
            double big = contour.radius(i);
            double wx = px - contour.centreX(i);
            double wy = py - contour.centreY(i);
            double outward = nx * wx + ny * wy;
            double sense = contour.sweep(i) > 0 ? 1 : -1;
            double gap = sense * (big * big - wx * wx - wy * wy);
            double facing = big + sense * outward;
            // a nearly straight arc has a radius so great that rounding looks like a gap
            double rounding = ROUNDING * Math.max(1, big);
            if (gap <= rounding * Math.max(1, big) || facing <= rounding || gap >= 2 * radius * facing) {
                return;
            }
            double r = gap / (2 * facing);
            double cx = wx + r * nx;
            double cy = wy + r * ny;
            double span = Math.hypot(cx, cy);
            if (span < TOUCHING || !contour.covers(i, Math.atan2(cy, cx))) {
                return;
            }
            double dx = cx / span * big - wx;
            double dy = cy / span * big - wy;
            double height = nx * dx + ny * dy;
            if (height * height >= leastSine * leastSine * (dx * dx + dy * dy)) {
                radius = r;
            }
        }
    }
}
