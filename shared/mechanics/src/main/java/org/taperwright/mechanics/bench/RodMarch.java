package org.taperwright.mechanics.bench;

/**
 * One run of the elastica's equations from the loaded end to the clamp, with the derivatives of what comes out by the end
 * slope alpha and by the force F. Classical Runge-Kutta steps of fourth order on the {@link RodGrid}; an instance holds
 * its working arrays, so it is not for use by two threads at once.
 */
final class RodMarch {
    /** Derivative by the end slope. */
    static final int ALPHA = 1;
    /** Derivative by the force. */
    static final int FORCE = 2;

    private static final int THETA = 0;
    private static final int X = 1;
    private static final int Y = 2;
    private static final int SIZE = 9;
    private static final double[] NOWHERE = new double[0];

    private final RodGrid grid;
    private final CurvatureLaw law;
    /** theta, X, Y, then the same differentiated by alpha, then by F. */
    private final double[] state = new double[SIZE];

    private final double[] trial = new double[SIZE];
    private final double[] rate = new double[SIZE];
    private final double[] sum = new double[SIZE];
    private final double[] bend = new double[2];
    private double least;

    RodMarch(RodGrid grid, CurvatureLaw law) {
        this.grid = grid;
        this.law = law;
    }

    /** Runs from the load to the clamp. */
    void run(double alpha, double force) {
        run(alpha, force, NOWHERE);
    }

    /** Runs from the load to the clamp and writes the arm of the force at every node, where there is room for it. */
    void run(double alpha, double force, double[] arm) {
        java.util.Arrays.fill(state, 0);
        state[THETA] = alpha;
        least = alpha;
        state[3 * ALPHA + THETA] = 1;
        for (int step = 0; step < grid.steps(); step++) {
            double h = grid.lengthMm(step);
            rates(state, 3 * step, force);
            gather(h / 2, 1, true);
            rates(trial, 3 * step + 1, force);
            gather(h / 2, 2, false);
            rates(trial, 3 * step + 1, force);
            gather(h, 2, false);
            rates(trial, 3 * step + 2, force);
            double before = state[X];
            double slopeBefore = state[THETA];
            for (int i = 0; i < SIZE; i++) {
                state[i] += h / 6 * (sum[i] + rate[i]);
            }
            least = Math.min(least, state[THETA]);
            if (arm.length > 0) {
                arm[3 * step] = before;
                arm[3 * step + 1] = (before + state[X]) / 2 + h / 8 * (Math.cos(slopeBefore) - Math.cos(state[THETA]));
                arm[3 * step + 2] = state[X];
            }
        }
    }

    private void gather(double ahead, double weight, boolean first) {
        for (int i = 0; i < SIZE; i++) {
            sum[i] = (first ? 0 : sum[i]) + weight * rate[i];
            trial[i] = state[i] + ahead * rate[i];
        }
    }

    private void rates(double[] at, int node, double force) {
        double sin = Math.sin(at[THETA]);
        double cos = Math.cos(at[THETA]);
        double moment = force * at[X];
        law.at(node, moment, bend);
        double compliance = bend[1];
        rate[THETA] = -bend[0];
        rate[X] = cos;
        rate[Y] = sin;
        for (int by = ALPHA; by <= FORCE; by++) {
            int k = 3 * by;
            double momentBy = force * at[k + X] + (by == FORCE ? at[X] : 0);
            rate[k + THETA] = -compliance * momentBy;
            rate[k + X] = -sin * at[k + THETA];
            rate[k + Y] = cos * at[k + THETA];
        }
    }

    /** Least slope anywhere, rad; below zero the rod is bent to and fro. */
    double leastSlope() {
        return least;
    }

    /** Slope where the clamp is, rad; 0 in equilibrium. */
    double clampSlope() {
        return state[THETA];
    }

    double clampSlopeBy(int parameter) {
        return state[3 * parameter + THETA];
    }

    /** Arm of the force about the clamp, mm. */
    double armMm() {
        return state[X];
    }

    double armBy(int parameter) {
        return state[3 * parameter + X];
    }

    /** Travel of the load across the undeformed axis, mm. */
    double deflectionMm() {
        return state[Y];
    }

    double deflectionBy(int parameter) {
        return state[3 * parameter + Y];
    }
}
