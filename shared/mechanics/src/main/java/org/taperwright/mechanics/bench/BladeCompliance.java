package org.taperwright.mechanics.bench;

import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

/**
 * How easily each place of an instrument bends in the elastic range: {@code 1 / (E I d^4)} with the harmonic mean of the
 * principal second moments (the compliance averaged over a turn of the flutes) and the factor of the flutes' turning
 * ({@link ShaftedBlade}).
 */
final class BladeCompliance {
    private final Alloy alloy;
    private final ShaftedBlade blade;

    BladeCompliance(Design design, Alloy alloy, BladeSections sections) {
        this.alloy = alloy;
        blade = ShaftedBlade.of(design, alloy, sections);
    }

    /** Curvature per moment at each node, 1/(N mm^2). */
    double[] bending(RodGrid grid) {
        double[] compliance = new double[grid.nodes()];
        for (int node = 0; node < compliance.length; node++) {
            double level = grid.levelMm(node);
            double d = blade.diameterMm(level);
            double unit = blade.section(level).iMean() * blade.bendingFactor(level);
            compliance[node] = 1 / (alloy.youngMpa() * unit * d * d * d * d);
        }
        return compliance;
    }
}
