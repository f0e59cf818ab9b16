package org.taperwright.shaping.placement;

/**
 * The wall as springs: overlap {@code v = u.n - (h - R)} in each direction, pressure {@code ks <v>}, energy
 * {@code 1/2 ks v^2 R dtheta} per length. Convex, once continuously differentiable, exact for any convex section; an instrument
 * wider than its place (a negative gap) is no special case.
 */
final class Wall {
    /** Overlap beyond which a direction counts as engaged, mm. */
    private static final double ENGAGED_MM = 1e-4;

    private final Workspace w;
    private final double step;

    Wall(Workspace workspace) {
        w = workspace;
        step = 2 * Math.PI / w.count;
    }

    /** Energy at offsets, mJ. */
    double energy(double[] u) {
        double sum = 0;
        for (int i = 1; i < w.nodes; i++) {
            double u1 = u[2 * i];
            double u2 = u[2 * i + 1];
            if (touches(i, u1, u2)) {
                double squares = 0;
                double radius = w.radius[i];
                int at = i * w.count;
                for (int k = 0; k < w.count; k++) {
                    double v = Math.max(0, u1 * w.cos[k] + u2 * w.sin[k] + radius - w.support[at + k]);
                    squares += v * v;
                }
                sum += 0.5 * weight(i) * squares;
            }
        }
        return sum;
    }

    /** The same, and adds slopes and matrix. */
    double assemble(double[] u) {
        double sum = 0;
        for (int i = 1; i < w.nodes; i++) {
            if (touches(i, u[2 * i], u[2 * i + 1])) {
                sum += assemble(i, u[2 * i], u[2 * i + 1]);
            }
        }
        return sum;
    }

    private double assemble(int i, double u1, double u2) {
        double squares = 0;
        double f1 = 0;
        double f2 = 0;
        double h11 = 0;
        double h12 = 0;
        double h22 = 0;
        double radius = w.radius[i];
        int at = i * w.count;
        for (int k = 0; k < w.count; k++) {
            double c = w.cos[k];
            double s = w.sin[k];
            double v = u1 * c + u2 * s + radius - w.support[at + k];
            if (v > 0) {
                squares += v * v;
                f1 += v * c;
                f2 += v * s;
                h11 += c * c;
                h12 += c * s;
                h22 += s * s;
            }
        }
        double weight = weight(i);
        int row = 2 * (i - 1) + BandedCholesky.PAD;
        w.slope[row] += weight * f1;
        w.slope[row + 1] += weight * f2;
        w.band[BandedCholesky.WIDTH * row] += weight * h11;
        w.band[BandedCholesky.WIDTH * (row + 1) + 1] += weight * h12;
        w.band[BandedCholesky.WIDTH * (row + 1)] += weight * h22;
        return 0.5 * weight * squares;
    }

    /** Writes the load on the wall at each node, N/mm, and the share of directions engaged. */
    void loads(double[] u) {
        for (int i = 0; i < w.nodes; i++) {
            double f1 = 0;
            double f2 = 0;
            int engaged = 0;
            double radius = w.radius[i];
            int at = i * w.count;
            for (int k = 0; k < w.count; k++) {
                double v = Math.max(0, u[2 * i] * w.cos[k] + u[2 * i + 1] * w.sin[k] + radius - w.support[at + k]);
                f1 += v * w.cos[k];
                f2 += v * w.sin[k];
                engaged += v > ENGAGED_MM ? 1 : 0;
            }
            w.engaged[i] = (double) engaged / w.count;
            double scale = w.spring[i] * w.radius[i] * step;
            w.load1[i] = scale * f1;
            w.load2[i] = scale * f2;
        }
    }

    private double weight(int i) {
        return w.reach[i] * w.spring[i] * w.radius[i] * step;
    }

    private boolean touches(int i, double u1, double u2) {
        double least = w.leastGap[i];
        return least < 0 || u1 * u1 + u2 * u2 > least * least;
    }
}
