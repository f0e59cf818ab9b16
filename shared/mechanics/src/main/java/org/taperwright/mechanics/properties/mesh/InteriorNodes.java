package org.taperwright.mechanics.properties.mesh;

import java.util.Arrays;

/**
 * Fills a section with points at the spacing of its size field, row by row from the outline inward: each point proposes
 * neighbours on a hexagon, and those that keep their distance from what is there are taken.
 */
final class InteriorNodes {
    private static final double APART = 0.8;
    private static final double FROM_OUTLINE = 0.5;

    private final SizeField sizes;
    private final int boundary;
    private final int most;
    private double[] x;
    private double[] y;
    private double[] direction;
    private double[] side;
    private int count;

    /**
     * Fills the polygon of the outline's corner nodes.
     *
     * @param most greatest number of points; filling stops there
     */
    InteriorNodes(double[] outlineX, double[] outlineY, SizeField sizes, int most) {
        this.sizes = sizes;
        this.most = most;
        boundary = outlineX.length;
        count = boundary;
        x = Arrays.copyOf(outlineX, 2 * boundary);
        y = Arrays.copyOf(outlineY, 2 * boundary);
        direction = new double[2 * boundary];
        side = new double[2 * boundary];
        for (int i = 0; i < boundary; i++) {
            int before = i == 0 ? boundary - 1 : i - 1;
            int after = i + 1 == boundary ? 0 : i + 1;
            direction[i] = Math.atan2(x[after] - x[before], y[before] - y[after]);
            side[i] = sizes.at(x[i], y[i]);
        }
        for (int i = 0; i < boundary; i++) {
            propose(i, direction[i] - Math.PI / 6);
            propose(i, direction[i] + Math.PI / 6);
        }
        for (int i = boundary; i < count; i++) {
            for (int k = 0; k < 6; k++) {
                propose(i, direction[i] + k * Math.PI / 3);
            }
        }
    }

    /** Outline nodes first, then those inside. */
    int count() {
        return count;
    }

    double x(int i) {
        return x[i];
    }

    double y(int i) {
        return y[i];
    }

    private void propose(int from, double towards) {
        double cos = Math.cos(towards);
        double sin = Math.sin(towards);
        double own = side[from];
        double there = sizes.at(x[from] + own * cos, y[from] + own * sin);
        double step = (own + there) / 2;
        double px = x[from] + step * cos;
        double py = y[from] + step * sin;
        if (count < most && free(px, py, APART * there) && inside(px, py, FROM_OUTLINE * there)) {
            add(px, py, towards, there);
        }
    }

    private boolean free(double px, double py, double distance) {
        double square = distance * distance;
        for (int i = count - 1; i >= 0; i--) {
            double dx = x[i] - px;
            double dy = y[i] - py;
            if (dx * dx + dy * dy < square) {
                return false;
            }
        }
        return true;
    }

    private boolean inside(double px, double py, double distance) {
        boolean in = false;
        double square = distance * distance;
        double ax = x[boundary - 1] - px;
        double ay = y[boundary - 1] - py;
        for (int i = 0; i < boundary; i++) {
            double bx = x[i] - px;
            double by = y[i] - py;
            if (ay > 0 != by > 0 && (ax * (by - ay) - ay * (bx - ax)) / (by - ay) > 0) {
                in = !in;
            }
            double dx = bx - ax;
            double dy = by - ay;
            double t = Math.max(0, Math.min(1, -(ax * dx + ay * dy) / (dx * dx + dy * dy)));
            double fx = ax + t * dx;
            double fy = ay + t * dy;
            if (fx * fx + fy * fy < square) {
                return false;
            }
            ax = bx;
            ay = by;
        }
        return in;
    }

    private void add(double px, double py, double towards, double size) {
        if (count == x.length) {
            x = Arrays.copyOf(x, 2 * count);
            y = Arrays.copyOf(y, 2 * count);
            direction = Arrays.copyOf(direction, 2 * count);
            side = Arrays.copyOf(side, 2 * count);
        }
        x[count] = px;
        y[count] = py;
        direction[count] = towards;
        side[count++] = size;
    }
}
