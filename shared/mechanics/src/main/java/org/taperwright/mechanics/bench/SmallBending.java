package org.taperwright.mechanics.bench;

import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

/**
 * The bending test before deflections grow large: slope and deflection at the load per unit of load, by the integrals of
 * {@code c = 1 / (E I d^4)} over the rod with the arm a from the load,
 *
 * <pre>slope per moment = integral of c,  slope per force = integral of c a,  deflection per force = integral of c a^2</pre>
 *
 * @param slopePerMoment rad per N mm
 * @param slopePerForce rad per N (and mm per N mm)
 * @param deflectionPerForce mm per N
 */
public record SmallBending(double slopePerMoment, double slopePerForce, double deflectionPerForce) {
    /** The small-deflection answers of a design, clamped and loaded as in the bending test. */
    public static SmallBending of(Design design, Alloy alloy, BladeSections sections) {
        RodGrid grid = RodGrid.between(design, BendingTest.CLAMP_MM, BendingTest.LOAD_MM);
        double[] compliance = new BladeCompliance(design, alloy, sections).bending(grid);
        double[] moment = new double[3];
        for (int power = 0; power < 3; power++) {
            for (int step = 0; step < grid.steps(); step++) {
                double sum = 0;
                for (int i = 0; i < 3; i++) {
                    int node = 3 * step + i;
                    double arm = BendingTest.LOAD_MM - grid.levelMm(node);
                    sum += (i == 1 ? 4 : 1) * compliance[node] * Math.pow(arm, power);
                }
                moment[power] += grid.lengthMm(step) / 6 * sum;
            }
        }
        return new SmallBending(moment[0], moment[1], moment[2]);
    }
}
