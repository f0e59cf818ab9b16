package org.taperwright.mechanics.bench;

/**
 * One run of an elastic rod in space from its clamp to its loaded end, by classical Runge-Kutta steps on a
 * {@link RodGrid}. With the place r, the tangent t and two directions n, m of the material,
 *
 * <pre>r' = t,  t' = K x t,  n' = K x n,  m' = K x m,  K = c_a (M.a) a + c_b (M.b) b + c_t (M.t) t
 * M = (r_L - r) x F</pre>
 *
 * with the principal axes {@code a = n cos psi + m sin psi}, {@code b = m cos psi - n sin psi} at the
 * flutes' angle psi, the compliances c_a, c_b in bending and c_t in twisting, and the force F along y at the place r_L.
 */
final class SpaceMarch {
    private static final int SIZE = 12;

    private final RodGrid grid;
    private final double[] soft;
    private final double[] stiff;
    private final double[] turning;
    private final double[] cos;
    private final double[] sin;
    private final double[] state = new double[SIZE];
    private final double[] trial = new double[SIZE];
    private final double[] rate = new double[SIZE];
    private final double[] sum = new double[SIZE];

    /**
     * A rod.
     *
     * @param soft compliance about the principal axis of least second moment, by node, 1/(N mm^2)
     * @param stiff the same of the greatest
     * @param turning twist per torque, by node, 1/(N mm^2)
     * @param angle angle from n to the axis of least second moment, by node, rad
     */
    SpaceMarch(RodGrid grid, double[] soft, double[] stiff, double[] turning, double[] angle) {
        this.grid = grid;
        this.soft = soft;
        this.stiff = stiff;
        this.turning = turning;
        cos = new double[angle.length];
        sin = new double[angle.length];
        for (int node = 0; node < angle.length; node++) {
            cos[node] = Math.cos(angle[node]);
            sin[node] = Math.sin(angle[node]);
        }
    }

    /** Runs under a force at an assumed place of the load; {@link #x()} and the like then say where the rod ends. */
    void run(double force, double loadX, double loadZ) {
        java.util.Arrays.fill(state, 0);
        state[3] = 1;
        state[7] = 1;
        state[11] = 1;
        for (int step = grid.steps() - 1; step >= 0; step--) {
            double h = grid.lengthMm(step);
            rates(state, 3 * step + 2, force, loadX, loadZ);
            gather(h / 2, 1, true);
            rates(trial, 3 * step + 1, force, loadX, loadZ);
            gather(h / 2, 2, false);
            rates(trial, 3 * step + 1, force, loadX, loadZ);
            gather(h, 2, false);
            rates(trial, 3 * step, force, loadX, loadZ);
            for (int i = 0; i < SIZE; i++) {
                state[i] += h / 6 * (sum[i] + rate[i]);
            }
        }
    }

    private void gather(double ahead, double weight, boolean first) {
        for (int i = 0; i < SIZE; i++) {
            sum[i] = (first ? 0 : sum[i]) + weight * rate[i];
            trial[i] = state[i] + ahead * rate[i];
        }
    }

    private void rates(double[] at, int node, double force, double loadX, double loadZ) {
        // (r_L - r) x (0, F, 0) = (-F dz, 0, F dx)
        double mx = -force * (loadZ - at[2]);
        double mz = force * (loadX - at[0]);
        double alongN = mx * at[6] + mz * at[8];
        double alongM = mx * at[9] + mz * at[11];
        double kt = turning[node] * (mx * at[3] + mz * at[5]);
        double c = cos[node];
        double s = sin[node];
        double ka = soft[node] * (alongN * c + alongM * s);
        double kb = stiff[node] * (alongM * c - alongN * s);
        double kn = ka * c - kb * s;
        double km = ka * s + kb * c;
        for (int i = 0; i < 3; i++) {
            rate[i] = at[3 + i];
        }
        double kx = kt * at[3] + kn * at[6] + km * at[9];
        double ky = kt * at[4] + kn * at[7] + km * at[10];
        double kz = kt * at[5] + kn * at[8] + km * at[11];
        for (int v = 3; v < SIZE; v += 3) {
            rate[v] = ky * at[v + 2] - kz * at[v + 1];
            rate[v + 1] = kz * at[v] - kx * at[v + 2];
            rate[v + 2] = kx * at[v + 1] - ky * at[v];
        }
    }

    double x() {
        return state[0];
    }

    double y() {
        return state[1];
    }

    double z() {
        return state[2];
    }

    /** Angle from the undeformed axis to the end, seen along the section's side, rad. */
    double endSlope() {
        return Math.atan2(state[4], state[3]);
    }
}
