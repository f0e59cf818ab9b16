package org.taperwright.mechanics.bench;

import java.util.function.DoubleUnaryOperator;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.BladeStiffness;
import org.taperwright.mechanics.properties.SectionProperties;

/**
 * How easily each place of an instrument bends and twists: {@code 1 / (E I d^4)} with the harmonic mean of the principal
 * second moments (the compliance averaged over a turn of the flutes), and {@code 1 / (G J d^4)}, both with the factors of
 * the flutes' turning ({@link BladeStiffness}); sections within the
 * working part, a round shaft beyond it.
 */
final class BladeCompliance {
    private final Design design;
    private final Alloy alloy;
    private final BladeSections sections;
    private final BladeStiffness blade;

    BladeCompliance(Design design, Alloy alloy, BladeSections sections) {
        this.design = design;
        this.alloy = alloy;
        this.sections = sections;
        blade = new BladeStiffness(design, sections, alloy.poisson());
    }

    /** Curvature per moment at each node, 1/(N mm^2). */
    double[] bending(RodGrid grid) {
        return inverse(grid, alloy.youngMpa(), blade::bending, RoundShaft.SECTION.iMean());
    }

    /** Twist per length and torque at each node, rad/(N mm^2). */
    double[] twisting(RodGrid grid) {
        return inverse(grid, alloy.shearModulusMpa(), blade::torsion, RoundShaft.SECTION.torsionConstant());
    }

    private double[] inverse(RodGrid grid, double modulus, DoubleUnaryOperator onBlade, double beyond) {
        double[] compliance = new double[grid.nodes()];
        for (int node = 0; node < compliance.length; node++) {
            double level = grid.levelMm(node);
            double d = design.diameterMm(level);
            double unit = level > design.workingPartMm() ? beyond : onBlade.applyAsDouble(level);
            compliance[node] = 1 / (modulus * unit * d * d * d * d);
        }
        return compliance;
    }

    /** The section of unit diameter at a level. */
    SectionProperties section(double levelMm) {
        return levelMm > design.workingPartMm() ? RoundShaft.SECTION : sections.at(levelMm);
    }
}
