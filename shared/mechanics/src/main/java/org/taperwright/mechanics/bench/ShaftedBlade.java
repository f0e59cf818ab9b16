package org.taperwright.mechanics.bench;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.BladeStiffness;
import org.taperwright.mechanics.properties.SectionProperties;
import org.taperwright.mechanics.properties.helix.PeakStressFactors;

/**
 * What an instrument sets against bending and twisting at each level: within the working part its sections with what the
 * turning of the flutes makes of them ({@link BladeStiffness}), beyond it a round shaft.
 */
final class ShaftedBlade {
    private final Design design;
    private final BladeSections sections;
    private final Optional<BladeStiffness> turning;

    private ShaftedBlade(Design design, BladeSections sections, Optional<BladeStiffness> turning) {
        this.design = design;
        this.sections = sections;
        this.turning = turning;
    }

    /** With the turning of the flutes counted. */
    static ShaftedBlade of(Design design, Alloy alloy, BladeSections sections) {
        return new ShaftedBlade(design, sections, Optional.of(new BladeStiffness(design, sections, alloy.poisson())));
    }

    /** With every section as stiff as a straight bar's. */
    static ShaftedBlade ofStraightBars(Design design, BladeSections sections) {
        return new ShaftedBlade(design, sections, Optional.empty());
    }

    /** The section of unit diameter at a level. */
    SectionProperties section(double levelMm) {
        return shaft(levelMm) ? RoundShaft.SECTION : sections.at(levelMm);
    }

    double diameterMm(double levelMm) {
        return design.diameterMm(levelMm);
    }

    /** What the turning of the flutes multiplies the bending stiffness by. */
    double bendingFactor(double levelMm) {
        return factor(levelMm, blade -> blade.bendingFactor(levelMm));
    }

    /** What the turning of the flutes multiplies the torsional stiffness by. */
    double torsionFactor(double levelMm) {
        return factor(levelMm, blade -> blade.torsionFactor(levelMm));
    }

    private double factor(double levelMm, ToDoubleFunction<BladeStiffness> value) {
        return shaft(levelMm) ? 1 : turning.map(value::applyAsDouble).orElse(1.0);
    }

    /** What the turning of the flutes multiplies peak stresses by. */
    PeakStressFactors peakStress(double levelMm) {
        return shaft(levelMm)
                ? PeakStressFactors.STRAIGHT
                : turning.map(blade -> blade.peakStress(levelMm)).orElse(PeakStressFactors.STRAIGHT);
    }

    private boolean shaft(double levelMm) {
        return levelMm > design.workingPartMm();
    }
}
