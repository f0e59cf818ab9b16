package org.taperwright.mechanics.properties.contour;

/**
 * Area, centroid and second moments of area of a section, exact by Green's theorem:
 * {@code A = 1/2 oint (x dy - y dx)}, {@code int x^2 dA = 1/3 oint x^3 dy} and so on. The line integrals are taken by
 * Gauss points that are exact on straight pieces and to rounding on arcs cut into eighths of a turn.
 *
 * @param area A, in d^2
 * @param centroidX centroid, in d
 * @param centroidY centroid, in d
 * @param iMax larger principal second moment about the centroid, in d^4
 * @param iMin smaller principal second moment about the centroid, in d^4
 * @param angleOfIMin direction of the axis about which the second moment is least, rad in (-pi/2, pi/2]; 0 when equal
 */
public record AreaMoments(
        double area, double centroidX, double centroidY, double iMax, double iMin, double angleOfIMin) {
    private static final double EQUAL = 1e-9;
    private static final double[] NODES = {
        0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
    };
    private static final double[] WEIGHTS = {
        0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
    };

    /** The moments of a contour. */
    public static AreaMoments of(Contour contour) {
        Sums sums = new Sums();
        for (int i = 0; i < contour.size(); i++) {
            if (contour.circular(i)) {
                sums.addArc(contour, i);
            } else {
                sums.addLine(contour, i);
            }
        }
        return sums.moments();
    }

    private static final class Sums {
        private double area;
        private double sx;
        private double sy;
        private double xx;
        private double yy;
        private double xy;

        private void addLine(Contour contour, int i) {
            double x0 = contour.startX(i);
            double y0 = contour.startY(i);
            double dx = contour.deltaX(i);
            double dy = contour.deltaY(i);
            for (int sign = -1; sign <= 1; sign += 2) {
                // two points are exact for the cubic integrand
                double t = 0.5 + sign * 0.28867513459481287;
                add(x0 + t * dx, y0 + t * dy, 0.5 * dx, 0.5 * dy);
            }
        }

        private void addArc(Contour contour, int i) {
            int parts = (int) Math.ceil(Math.abs(contour.sweep(i)) / (Math.PI / 4) - 1e-9);
            double half = contour.sweep(i) / parts / 2;
            double r = contour.radius(i);
            for (int k = 0; k < parts; k++) {
                double mid = contour.fromAngle(i) + (2 * k + 1) * half;
                for (int g = 0; g < NODES.length; g++) {
                    for (int sign = -1; sign <= 1; sign += 2) {
                        double angle = mid + sign * NODES[g] * half;
                        double cos = r * Math.cos(angle);
                        double sin = r * Math.sin(angle);
                        double w = WEIGHTS[g] * half;
                        add(contour.centreX(i) + cos, contour.centreY(i) + sin, -sin * w, cos * w);
                    }
                }
            }
        }

        private void add(double x, double y, double dx, double dy) {
            area += 0.5 * (x * dy - y * dx);
            sx += 0.5 * x * x * dy;
            sy -= 0.5 * y * y * dx;
            xx += x * x * x * dy / 3;
            yy -= y * y * y * dx / 3;
            xy += 0.5 * x * x * y * dy;
        }

        private AreaMoments moments() {
            double cx = sx / area;
            double cy = sy / area;
            double aboutX = yy - area * cy * cy;
            double aboutY = xx - area * cx * cx;
            double product = xy - area * cx * cy;
            double mean = (aboutX + aboutY) / 2;
            double difference = (aboutY - aboutX) / 2;
            double spread = Math.hypot(difference, product);
            double angle = spread < EQUAL * mean ? 0 : 0.5 * Math.atan2(2 * product, 2 * difference);
            return new AreaMoments(area, cx, cy, mean + spread, mean - spread, angle);
        }
    }
}
