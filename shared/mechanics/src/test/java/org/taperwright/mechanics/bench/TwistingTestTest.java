package org.taperwright.mechanics.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

class TwistingTestTest {
    private static TwistingResult twisted(Design design, Alloy alloy) {
        return TwistingTest.run(design, alloy, BladeSections.of(design));
    }

    private static Alloy alloy(String id) {
        return Alloys.find(id).orElseThrow();
    }

    /** From torque to angle and back by another way: a sum along the blade, and a search for its zero. */
    @ParameterizedTest
    @ValueSource(strings = {"stainless-steel", "niti-superelastic", "niti-r-phase", "niti-martensitic"})
    void theTorqueAtTheAngleOfATorqueIsThatTorque(String id) {
        Design design = BenchDesigns.of("triangle", 0.25, 0.04);
        for (CurvePoint point : twisted(design, alloy(id)).curve()) {
            double back = TwistingTest.torquesNmm(design, alloy(id), BladeSections.of(design), point.angleDeg())[0];
            assertThat(back).isCloseTo(point.momentNmm(), within(1e-6));
        }
    }

    /** Of similar sections torque goes with the cube of the diameter: stress times area times arm (Saint-Venant, Nadai). */
    @ParameterizedTest
    @ValueSource(strings = {"stainless-steel", "niti-superelastic"})
    void theTorqueAtFractureRisesWithTheCubeOfTheSize(String id) {
        double thin = twisted(BenchDesigns.of("square", 0.2, 0), alloy(id)).fractureTorqueNmm();
        for (double times : new double[] {1.5, 2, 4}) {
            double thick = twisted(BenchDesigns.of("square", 0.2 * times, 0), alloy(id))
                    .fractureTorqueNmm();
            assertThat(thick / thin).isCloseTo(Math.pow(times, 3), within(1e-9 * Math.pow(times, 3)));
        }
    }

    /** A taper is thinnest where the hold ends, so that is where it breaks (idea of ISO 3630-1). */
    @Test
    void aTaperedBladeBreaksAtTheTipThatIsHeld() {
        TwistingResult result = twisted(BenchDesigns.of("square", 0.25, 0.02), alloy("stainless-steel"));
        assertThat(result.weakestLevelMm()).isCloseTo(TwistingTest.HELD_MM, within(1e-6));
    }
}
