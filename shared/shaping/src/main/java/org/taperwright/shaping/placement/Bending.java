package org.taperwright.shaping.placement;

import org.taperwright.shaping.placement.rod.MomentLaw;

/**
 * Bending energy {@code sum w (W(|k|) - Q) J} of a rod about the canal's centreline, by cells about the nodes, with central
 * differences; half a cell at the clamp, whose ghost node is {@code u_-1 = u_1 - 2 h tilt}, none at the tip. The matrix is
 * Gauss and Newton's: of {@code k sqrt J}, with M' along the curvature and M / k across.
 */
final class Bending {
    private final Workspace w;
    private final MomentLaw law;
    private final boolean linear;
    /** Curvature numerator, its first derivatives by (u1, u2, u1', u2', u1'', u2''), those of q, and by node. */
    private final double[] local = new double[24];

    private final double[] nodal = new double[24];
    private double n1;
    private double n2;
    private double n3;
    private double q;

    Bending(Workspace workspace, MomentLaw law) {
        w = workspace;
        this.law = law;
        linear = law == MomentLaw.LINEAR;
    }

    /** Energy at offsets, mJ; writes curvature and stretch. */
    double energy(double[] u) {
        double sum = 0;
        for (int i = 0; i < w.nodes - 1; i++) {
            sum += cell(i, u, false);
        }
        return sum;
    }

    /** The same, and adds slopes and matrix. */
    double assemble(double[] u) {
        double sum = 0;
        for (int i = 0; i < w.nodes - 1; i++) {
            sum += cell(i, u, true);
        }
        return sum;
    }

    private double cell(int i, double[] u, boolean slopes) {
        double h = w.spacing;
        double u1 = u[2 * i];
        double u2 = u[2 * i + 1];
        double after1 = u[2 * i + 2];
        double after2 = u[2 * i + 3];
        double before1 = i == 0 ? after1 - 2 * h * w.tilt1 : u[2 * i - 2];
        double before2 = i == 0 ? after2 - 2 * h * w.tilt2 : u[2 * i - 1];
        double p1 = (after1 - before1) / (2 * h);
        double p2 = (after2 - before2) / (2 * h);
        double c1 = (after1 - 2 * u1 + before1) / (h * h);
        double c2 = (after2 - 2 * u2 + before2) / (h * h);
        double k1 = w.kappa1[i];
        double k2 = w.kappa2[i];
        double g1 = w.change1[i];
        double g2 = w.change2[i];
        double a = 1 - k1 * u1 - k2 * u2;
        double a1 = a * k1 + c1;
        double a2 = a * k2 + c2;
        double tau = -2 * (k1 * p1 + k2 * p2) - g1 * u1 - g2 * u2;
        q = a * a + p1 * p1 + p2 * p2;
        n1 = a * a1 - tau * p1;
        n2 = a * a2 - tau * p2;
        n3 = p1 * a2 - p2 * a1;
        double stretch = Math.sqrt(q);
        double curvature = Math.sqrt(n1 * n1 + n2 * n2 + n3 * n3) / (q * stretch);
        w.curvature[i] = curvature;
        w.stretch[i] = stretch;
        double energy = respond(i, curvature);
        if (slopes) {
            derive(k1, k2, g1, g2, p1, p2, a, a1, a2, tau);
            spread(i, curvature, stretch, energy - w.push[i]);
        }
        return w.cell[i] * stretch * (energy - w.push[i]);
    }

    /** Energy per length; leaves {@code M / k} and {@code M'} in the workspace. */
    private double respond(int i, double curvature) {
        double stiffness = w.stiffness[i];
        if (linear) {
            w.moment[0] = stiffness;
            w.moment[1] = stiffness;
            return stiffness * curvature * curvature / 2;
        }
        double radius = w.half[i];
        law.at(curvature * radius, w.moment);
        double energy = stiffness / (radius * radius) * w.moment[2];
        w.moment[0] = curvature == 0 ? stiffness : stiffness * w.moment[0] / (radius * curvature);
        w.moment[1] *= stiffness;
        return energy;
    }

    /** How the energy per length would change with the level on the rod, {@code dW/dx} at this curvature, N/mm. */
    double stiffening(int i) {
        double curvature = w.curvature[i];
        double radius = w.half[i];
        law.at(curvature * radius, w.moment);
        double square = radius * radius;
        return w.stiffnessSlope[i] * w.moment[2] / square
                + w.stiffness[i] * w.radiusSlope[i] / square * (w.moment[0] * curvature - 2 * w.moment[2] / radius);
    }

    /** Bending energy alone, without the push, mJ. */
    double bent() {
        double sum = 0;
        for (int i = 0; i < w.nodes - 1; i++) {
            sum += w.cell[i] * w.stretch[i] * respond(i, w.curvature[i]);
        }
        return sum;
    }

    private void derive(
            double k1,
            double k2,
            double g1,
            double g2,
            double p1,
            double p2,
            double a,
            double a1,
            double a2,
            double tau) {
        double[] d = local;
        double aside = k1 * p2 - k2 * p1;
        double t1 = a1 + a * k1;
        double t2 = a2 + a * k2;
        d[0] = g1 * p1 - k1 * t1;
        d[1] = g2 * p1 - k2 * t1;
        d[2] = 2 * k1 * p1 - tau;
        d[3] = 2 * k2 * p1;
        d[4] = a;
        d[5] = 0;
        d[6] = g1 * p2 - k1 * t2;
        d[7] = g2 * p2 - k2 * t2;
        d[8] = 2 * k1 * p2;
        d[9] = 2 * k2 * p2 - tau;
        d[10] = 0;
        d[11] = a;
        d[12] = k1 * aside;
        d[13] = k2 * aside;
        d[14] = a2;
        d[15] = -a1;
        d[16] = -p2;
        d[17] = p1;
        d[18] = -2 * a * k1;
        d[19] = -2 * a * k2;
        d[20] = 2 * p1;
        d[21] = 2 * p2;
        d[22] = 0;
        d[23] = 0;
    }

    /** From derivatives by offset, slope and bend to derivatives by the offsets of three nodes. */
    private int toNodes(int i) {
        double bend = 1 / (w.spacing * w.spacing);
        double tilt = 1 / (2 * w.spacing);
        if (i == 0) {
            for (int r = 0; r < 24; r += 6) {
                nodal[r] = 2 * bend * local[r + 4];
                nodal[r + 1] = 2 * bend * local[r + 5];
            }
            return 2;
        }
        for (int r = 0; r < 24; r += 6) {
            for (int c = 0; c < 2; c++) {
                double curved = bend * local[r + 4 + c];
                double sloped = tilt * local[r + 2 + c];
                nodal[r + c] = curved - sloped;
                nodal[r + 2 + c] = local[r + c] - 2 * curved;
                nodal[r + 4 + c] = curved + sloped;
            }
        }
        return 6;
    }

    private void spread(int i, double curvature, double stretch, double energy) {
        double secant = w.moment[0];
        double tangent = w.moment[1];
        int size = toNodes(i);
        double[] d = nodal;
        double weight = w.cell[i];
        double scale = 1 / (q * stretch);
        double bend = weight * secant * stretch * scale * scale;
        double byStretch = weight * (energy / (2 * stretch) - 1.5 * secant * curvature * curvature / stretch);
        int first = i == 0 ? 0 : 2 * (i - 2);
        for (int r = 0; r < size; r++) {
            int at = first + r;
            if (at >= 0) {
                w.slope[at + BandedCholesky.PAD] +=
                        bend * (n1 * d[r] + n2 * d[6 + r] + n3 * d[12 + r]) + byStretch * d[18 + r];
            }
        }
        double m1 = 1.25 * n1 / q;
        double m2 = 1.25 * n2 / q;
        double m3 = 1.25 * n3 / q;
        for (int r = 0; r < size; r++) {
            double dq = d[18 + r];
            d[r] -= m1 * dq;
            d[6 + r] -= m2 * dq;
            d[12 + r] -= m3 * dq;
        }
        double length = curvature * q * stretch;
        if (linear || length == 0) {
            scatter(first, size, bend);
            return;
        }
        double along = bend * (tangent / secant - 1) / (length * length);
        for (int r = 0; r < size; r++) {
            d[18 + r] = n1 * d[r] + n2 * d[6 + r] + n3 * d[12 + r];
        }
        scatter(first, size, bend);
        scatterAlong(first, size, along);
    }

    private void scatter(int first, int size, double bend) {
        double[] d = nodal;
        double[] band = w.band;
        int skip = Math.max(0, -first);
        for (int r = skip; r < size; r++) {
            double d1 = bend * d[r];
            double d2 = bend * d[6 + r];
            double d3 = bend * d[12 + r];
            int row = BandedCholesky.WIDTH * (first + r + BandedCholesky.PAD) + r;
            for (int c = skip; c <= r; c++) {
                band[row - c] += d1 * d[c] + d2 * d[6 + c] + d3 * d[12 + c];
            }
        }
    }

    private void scatterAlong(int first, int size, double along) {
        double[] d = nodal;
        int skip = Math.max(0, -first);
        for (int r = skip; r < size; r++) {
            double d4 = along * d[18 + r];
            int row = BandedCholesky.WIDTH * (first + r + BandedCholesky.PAD) + r;
            for (int c = skip; c <= r; c++) {
                w.band[row - c] += d4 * d[18 + c];
            }
        }
    }
}
