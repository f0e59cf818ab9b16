package org.taperwright.mechanics.bench;

/**
 * Curvature along a rod in an equilibrium, and the shape it keeps when the load is taken away: unloading is elastic, so
 * at every node the curvature {@code kappa - M kappa'(0)} stays.
 */
final class BentShape {
    private final RodGrid grid;
    private final CurvatureLaw law;
    /** Arm of the force at each node, mm. */
    private final double[] arm;

    private final double force;

    private BentShape(RodGrid grid, CurvatureLaw law, double[] arm, double force) {
        this.grid = grid;
        this.law = law;
        this.arm = arm;
        this.force = force;
    }

    /** The shape in an equilibrium of a rod. */
    static BentShape of(RodGrid grid, CurvatureLaw law, Equilibrium equilibrium) {
        double[] arm = new double[grid.nodes()];
        new RodMarch(grid, law).run(equilibrium.endSlope(), equilibrium.forceN(), arm);
        return new BentShape(grid, law, arm, equilibrium.forceN());
    }

    double momentNmm(int node) {
        return force * arm[node];
    }

    /** Curvature at a node, 1/mm. */
    double curvature(int node) {
        double[] answer = new double[2];
        law.at(node, momentNmm(node), answer);
        return answer[0];
    }

    /** Angle of the chord from the clamp to the load after unloading, rad. */
    double chordLeft() {
        double[] left = new double[grid.nodes()];
        double[] elastic = new double[2];
        for (int node = 0; node < left.length; node++) {
            law.at(node, 0, elastic);
            // loading adds to the elastic curvature; the table of curvatures may fall short of it by its interpolation
            left[node] = Math.max(0, curvature(node) - momentNmm(node) * elastic[1]);
        }
        double slope = 0;
        double x = 0;
        double y = 0;
        // from the clamp, where the slope is zero, up to the load
        for (int step = grid.steps() - 1; step >= 0; step--) {
            double h = grid.lengthMm(step);
            double low = left[3 * step + 2];
            double middle = left[3 * step + 1];
            double high = left[3 * step];
            double halfway = slope + h / 24 * (5 * low + 8 * middle - high);
            double end = slope + h / 6 * (low + 4 * middle + high);
            x += h / 6 * (Math.cos(slope) + 4 * Math.cos(halfway) + Math.cos(end));
            y += h / 6 * (Math.sin(slope) + 4 * Math.sin(halfway) + Math.sin(end));
            slope = end;
        }
        return Math.atan2(y, x);
    }
}
