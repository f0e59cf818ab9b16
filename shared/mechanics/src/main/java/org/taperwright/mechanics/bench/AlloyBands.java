package org.taperwright.mechanics.bench;

import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloySpread;
import org.taperwright.mechanics.alloy.Fracture;
import org.taperwright.mechanics.bench.response.TorqueTwist;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.SectionProperties;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.uncertainty.Sampling;

/**
 * The bench tests with the bands that the alloy's constants give them. Each test is solved at the constants and at the edges
 * of each band, not at every sample ({@link Sampling#solvedAtTheEdges}).
 */
public final class AlloyBands {
    private final Design design;
    private final Alloy alloy;
    private final BladeSections sections;

    /** The tests of a design in an alloy. */
    public AlloyBands(Design design, Alloy alloy) {
        this.design = design;
        this.alloy = alloy;
        this.sections = BladeSections.of(design);
    }

    /** Moment at the clamp at 45 degrees, N mm. */
    public Reading bendingMoment() {
        return solved(other -> BendingTest.momentNmm(design, other, sections, BendingTest.ANGLE_DEG));
    }

    /** Torque at fracture at the level that breaks, N mm. */
    public Reading fractureTorque(TwistingResult known) {
        return solved(other -> fractureTorqueNmm(other, known.weakestLevelMm()));
    }

    /** Torque at fracture over torque at first yield. */
    public Reading torsionalReserve(TwistingResult known) {
        double perYield = known.yieldTorqueNmm() / alloy.yieldMpa();
        return solved(other -> fractureTorqueNmm(other, known.weakestLevelMm()) / (perYield * other.yieldMpa()));
    }

    /** Angle at fracture, degrees. */
    public Reading fractureAngle() {
        return solved(other -> TwistingTest.run(design, other, sections).fractureAngleDeg());
    }

    private Reading solved(ToDoubleFunction<Alloy> test) {
        AlloySpread spread = AlloySpread.of(alloy);
        return Sampling.solvedAtTheEdges(spread.constants(), values -> test.applyAsDouble(spread.with(values)));
    }

    private double fractureTorqueNmm(Alloy other, double levelMm) {
        SectionProperties section = levelMm > design.workingPartMm() ? RoundShaft.SECTION : sections.at(levelMm);
        return TorqueTwist.of(section, other.shear(), other.constant(Fracture.SHEAR_STRAIN.name()))
                        .fractureTorque()
                * Math.pow(design.diameterMm(levelMm), 3);
    }
}
