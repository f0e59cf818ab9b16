package org.taperwright.mechanics.bench;

import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.SectionProperties;

/**
 * How easily each place of an instrument bends in the elastic range: {@code 1 / (E I d^4)} with the harmonic mean of the
 * principal second moments (the compliance averaged over a turn of the flutes); sections within the working part, a round
 * shaft beyond it.
 */
final class BladeCompliance {
    private final Design design;
    private final Alloy alloy;
    private final BladeSections sections;

    BladeCompliance(Design design, Alloy alloy, BladeSections sections) {
        this.design = design;
        this.alloy = alloy;
        this.sections = sections;
    }

    /** Curvature per moment at each node, 1/(N mm^2). */
    double[] bending(RodGrid grid) {
        return inverse(grid, section -> alloy.youngMpa() * section.iMean());
    }

    private double[] inverse(RodGrid grid, ToDoubleFunction<SectionProperties> stiffness) {
        double[] compliance = new double[grid.nodes()];
        for (int node = 0; node < compliance.length; node++) {
            double level = grid.levelMm(node);
            double d = design.diameterMm(level);
            compliance[node] = 1 / (stiffness.applyAsDouble(section(level)) * d * d * d * d);
        }
        return compliance;
    }

    /** The section of unit diameter at a level. */
    SectionProperties section(double levelMm) {
        return levelMm > design.workingPartMm() ? RoundShaft.SECTION : sections.at(levelMm);
    }
}
