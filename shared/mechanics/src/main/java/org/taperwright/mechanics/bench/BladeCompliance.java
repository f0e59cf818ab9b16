package org.taperwright.mechanics.bench;

import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.BladeStiffness;

/**
 * How easily each place of an instrument bends in the elastic range: {@code 1 / (E I d^4)} with the harmonic mean of the
 * principal second moments (the compliance averaged over a turn of the flutes) and the factor of the flutes' turning
 * ({@link BladeStiffness}); sections within the working part, a round shaft beyond it.
 */
final class BladeCompliance {
    private final Design design;
    private final Alloy alloy;
    private final BladeStiffness blade;

    BladeCompliance(Design design, Alloy alloy, BladeSections sections) {
        this.design = design;
        this.alloy = alloy;
        blade = new BladeStiffness(design, sections, alloy.poisson());
    }

    /** Curvature per moment at each node, 1/(N mm^2). */
    double[] bending(RodGrid grid) {
        double[] compliance = new double[grid.nodes()];
        for (int node = 0; node < compliance.length; node++) {
            double level = grid.levelMm(node);
            double d = design.diameterMm(level);
            double unit = level > design.workingPartMm() ? RoundShaft.SECTION.iMean() : blade.bending(level);
            compliance[node] = 1 / (alloy.youngMpa() * unit * d * d * d * d);
        }
        return compliance;
    }
}
