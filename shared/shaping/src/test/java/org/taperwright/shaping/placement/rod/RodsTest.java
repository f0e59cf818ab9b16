package org.taperwright.shaping.placement.rod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.Profiles;
import org.taperwright.shaping.Given;

class RodsTest {
    private static final Alloy STEEL = Alloys.find("stainless-steel").orElseThrow();
    private static final Alloy NITI = Alloys.find("niti-superelastic").orElseThrow();
    private static final Design DESIGN = Given.design(25, 0.04, 75, Motion.ROTATION);

    /** The blade's profile is worked out apart from the rod, level by level. */
    @Test
    void stiffnessAlongTheRodIsTheBladesProfile() {
        Rod rod = Rods.of(DESIGN, STEEL);
        Profiles.of(DESIGN, STEEL, BladeSections.of(DESIGN)).points().stream()
                .filter(point -> point.levelMm() < 15.9)
                .forEach(point -> assertThat(rod.stiffnessNmm2(point.levelMm()))
                        .isEqualTo(point.bendingStiffnessNmm2(), within(2e-3 * point.bendingStiffnessNmm2())));
    }

    /** A cone of 75 degrees: {@code 2 x tan 37.5°} until it meets the taper at {@code d0 / (2 tan 37.5° - 0.04)}. */
    @Test
    void aPassiveTipIsAConeThatCutsOnlyWhereItNearsTheTaper() {
        Rod rod = Rods.of(DESIGN, STEEL);
        double rise = 2 * Math.tan(Math.toRadians(37.5));
        double shoulder = 0.25 / (rise - 0.04);
        assertThat(Rods.nonCuttingMm(DESIGN)).isEqualTo(0.75 * shoulder, within(1e-9));
        assertThat(rod.wallRadiusMm(shoulder)).isEqualTo((0.25 + 0.04 * shoulder) / 2, within(1e-9));
        assertThat(rod.wallRadiusMm(shoulder / 2)).isLessThan(0.6 * rod.wallRadiusMm(shoulder));
        assertThat(rod.cuts(shoulder / 2)).isFalse();
        assertThat(rod.cuts(shoulder * 1.1)).isTrue();
        assertThat(rod.cuts(17)).isFalse();
    }

    /**
     * Well on the plateau the moment is that of the plateau's stress, strain 0.0116 in tension to 1.3 times that in compression,
     * times a square's shape factor of 1.5 to 2 by the axis (handbooks of plastic bending), and what the plateau's slope adds.
     */
    @Test
    void aSuperelasticLawStartsAsHookesAndGivesWayOnThePlateau() {
        double[] answer = new double[3];
        MomentLaw law = Rods.of(DESIGN, NITI).law();
        law.at(0.004, answer);
        assertThat(answer[0]).isEqualTo(0.004, within(2e-4));
        law.at(0.04, answer);
        assertThat(answer[0]).isBetween(1.5 * 0.0116, 2 * 1.3 * 0.0116 + 0.04 * 1500 / 42_500);
        assertThat(answer[1]).isBetween(0.0, 0.4);
    }

    @Test
    void levelsBeforeAStepBelongToWhatComesBeforeIt() {
        Rod rod = Rod.of(
                20,
                0,
                16,
                java.util.List.of(
                        new RodSection(0, 0.2, 1, 0.2),
                        new RodSection(16, 0.52, 1, 0.52),
                        new RodSection(16, 0.9, 2, 0.9),
                        new RodSection(21, 0.9, 2, 0.9)),
                MomentLaw.LINEAR);
        assertThat(rod.diameterMm(16)).isEqualTo(0.52, within(1e-12));
        assertThat(rod.diameterMm(16.01)).isEqualTo(0.9, within(1e-12));
        assertThat(rod.radiusSlope(0)).isEqualTo(0.01, within(1e-12));
        assertThat(rod.stiffnessSlope(8, 0)).isEqualTo(4 * Math.pow(0.36, 3) * 0.02, within(1e-12));
        assertThat(rod.stiffnessNmm2(18)).isEqualTo(2 * Math.pow(0.9, 4), within(1e-12));
    }
}
