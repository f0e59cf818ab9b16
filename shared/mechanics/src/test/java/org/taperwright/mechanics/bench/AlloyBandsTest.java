package org.taperwright.mechanics.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloySpread;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.uncertainty.Sampling;

class AlloyBandsTest {
    private static final Alloy NITI = Alloys.find("niti-superelastic").orElseThrow();
    private static final Design DESIGN = BenchDesigns.of("triangle", 0.25, 0.04);

    @Test
    void anAlloySpreadsAroundItself() {
        for (Alloy alloy : Alloys.all()) {
            AlloySpread spread = AlloySpread.of(alloy);
            double[] same =
                    spread.constants().stream().mapToDouble(Reading::value).toArray();
            assertThat(spread.with(same).tension()).isEqualTo(alloy.tension());
            assertThat(spread.with(same).shear()).isEqualTo(alloy.shear());
        }
    }

    /** Two hundred whole solves against the few at the edges: the band is close, at a fraction of the work. */
    @Test
    void theFewSolvesGiveNearlyTheBandOfTwoHundred() {
        BladeSections sections = BladeSections.of(DESIGN);
        AlloySpread spread = AlloySpread.of(NITI);
        Band all = Sampling.reading(
                        spread.constants(), values -> BendingTest.momentNmm(DESIGN, spread.with(values), sections, 45))
                .band()
                .orElseThrow();
        Band few = new AlloyBands(DESIGN, NITI).bendingMoment().band().orElseThrow();
        assertThat(few.low()).isCloseTo(all.low(), within(0.06 * all.low()));
        assertThat(few.high()).isCloseTo(all.high(), within(0.06 * all.high()));
    }

    @Test
    void torqueReserveAndAngleAgreeWithTheTwistingTest() {
        TwistingResult known = TwistingTest.run(DESIGN, NITI, BladeSections.of(DESIGN));
        AlloyBands bands = new AlloyBands(DESIGN, NITI);
        assertThat(bands.fractureTorque(known).value())
                .isCloseTo(known.fractureTorqueNmm(), within(1e-6 * known.fractureTorqueNmm()));
        assertThat(bands.torsionalReserve(known).value())
                .isCloseTo(known.fractureTorqueNmm() / known.yieldTorqueNmm(), within(1e-6))
                .isGreaterThan(1);
        assertThat(bands.fractureAngle().value()).isEqualTo(known.fractureAngleDeg());
    }

    /** Strength enters the fracture torque nearly in proportion, so its band is at least as wide as the strength's. */
    @Test
    void theBandOfTheFractureTorqueHoldsThatOfTheShearStrength() {
        for (String id : List.of("stainless-steel", "carbon-steel")) {
            Alloy steel = Alloys.find(id).orElseThrow();
            TwistingResult known = TwistingTest.run(DESIGN, steel, BladeSections.of(DESIGN));
            Reading torque = new AlloyBands(DESIGN, steel).fractureTorque(known);
            Band strength = steel.reading("shearStrengthMpa").band().orElseThrow();
            double width = strength.high() / strength.low();
            assertThat(torque.band().orElseThrow().high()
                            / torque.band().orElseThrow().low())
                    .isGreaterThan(1 + 0.5 * (width - 1));
        }
    }
}
