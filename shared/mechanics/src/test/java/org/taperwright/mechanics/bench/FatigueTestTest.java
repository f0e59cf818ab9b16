package org.taperwright.mechanics.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.alloy.StrainLife;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.quantity.Reading;

class FatigueTestTest {
    private static final Alloy NITI = Alloys.find("niti-superelastic").orElseThrow();

    private static Design cylinder(double diameterMm) {
        return BenchDesigns.of("square", diameterMm, List.of(new TaperSegment(0, 16, 0)), Motion.ROTATION);
    }

    /** d / 2R where the arc is reached in full. */
    @Test
    void theStrainOfACylinderIsItsDiameterOverTwiceTheRadius() {
        FatigueResult result = FatigueTest.run(cylinder(0.4), NITI, Tube.USUAL, Motion.ROTATION, 300);
        assertThat(result.strainAmplitude()).isCloseTo(0.4 / 10, within(1e-12));
    }

    /** The arc's angle is turned whatever the easing: the curvature's integral is the angle. */
    @Property
    void theCurvatureTurnsTheTubesAngle(
            @ForAll @DoubleRange(min = 10, max = 90) double angle,
            @ForAll @DoubleRange(min = 2, max = 10) double radius) {
        Tube tube = new Tube(angle, radius, 0.1, 30);
        double sum = 0;
        int steps = 6000;
        for (int i = 0; i < steps; i++) {
            sum += tube.curvature((i + 0.5) * 60 / steps) * 60 / steps;
        }
        assertThat(sum).isCloseTo(Math.toRadians(angle), within(2e-3));
    }

    @Property
    void theLawIsAPowerOfTheStrain(@ForAll @DoubleRange(min = 0.01, max = 0.04) double strain) {
        double ratio = FatigueTest.cycles(NITI, Motion.ROTATION, strain).value()
                / FatigueTest.cycles(NITI, Motion.ROTATION, 2 * strain).value();
        assertThat(ratio).isCloseTo(Math.pow(2, 1 / 0.48), within(1e-9 * ratio));
    }

    @Test
    void whatIsBelowTheEnduranceStrainLastsTenMillionCyclesOrMore() {
        FatigueResult thin = FatigueTest.run(cylinder(0.06), NITI, new Tube(60, 15, 0.1, 8), Motion.ROTATION, 300);
        assertThat(thin.endures()).isTrue();
        assertThat(thin.cycles().value()).isGreaterThanOrEqualTo(StrainLife.ENDURED);
    }

    @Test
    void cyclesCarryABandAndTimeIsCyclesOverSpeed() {
        FatigueResult result = FatigueTest.run(cylinder(0.4), NITI, Tube.USUAL, Motion.ROTATION, 250);
        Reading cycles = result.cycles();
        assertThat(cycles.band().orElseThrow().low()).isLessThan(cycles.value());
        assertThat(cycles.band().orElseThrow().high()).isGreaterThan(cycles.value());
        assertThat(result.seconds().value()).isCloseTo(cycles.value() / 250 * 60, within(1e-9));
    }

    @Test
    void steelIsAlwaysExtrapolatedBecauseNoTestOfInstrumentsIsKnown() {
        Alloy steel = Alloys.find("stainless-steel").orElseThrow();
        assertThat(FatigueTest.run(cylinder(0.4), steel).extrapolated()).isTrue();
        assertThat(FatigueTest.run(cylinder(0.4), NITI).extrapolated()).isFalse();
        assertThat(FatigueTest.run(cylinder(1.2), NITI).extrapolated()).isTrue();
    }

    @Test
    void aTubeNeedsAnArc() {
        assertThatThrownBy(() -> new Tube(0, 5, 0.1, 5)).isInstanceOf(IllegalArgumentException.class);
    }
}
