package org.taperwright.mechanics.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.properties.BladeSections;

class SpaceBendingTest {
    private static final Alloy STEEL = Alloys.find("stainless-steel").orElseThrow();

    private static Design blade(String family, double flutesPerMm) {
        return Designs.with(BenchDesigns.of(family, 0.25, 0.02))
                .flutesPerMm(flutesPerMm)
                .design();
    }

    /** Euler's elastica: at one slope of the chord the moment goes with EI, here from one straight rod to another. */
    @Test
    void aStraightBladeBentAboutAPrincipalAxisStaysInThePlaneAndItsMomentGoesWithTheSecondMoment() {
        Design design = Designs.with(blade("rhombus", 0))
                .taper(java.util.List.of(new org.taperwright.mechanics.design.TaperSegment(0, 25, 0)))
                .design();
        BladeSections sections = BladeSections.of(design);
        SpaceBending one = SpaceBending.of(design, STEEL, sections, 0, 45);
        SpaceBending other = SpaceBending.of(design, STEEL, sections, Math.PI / 2, 45);
        double most = Math.max(one.momentNmm(), other.momentNmm());
        double least = Math.min(one.momentNmm(), other.momentNmm());
        double ratio = sections.at(10).iMax() / sections.at(10).iMin();
        assertThat(most / least).isCloseTo(ratio, within(1e-5 * ratio));
        assertThat(one.asideMm()).isCloseTo(0, within(1e-6));
        assertThat(other.asideMm()).isCloseTo(0, within(1e-6));
    }

    /** Of equal principal second moments any orientation gives the plane rod's answer; 0.2 % is the alloy's own proportional range. */
    @Test
    void aSquareBladeBendsAsThePlaneRodHoweverItIsTurned() {
        Design design = blade("square", 1);
        BladeSections sections = BladeSections.of(design);
        Alloy elastic = Alloys.find("niti-superelastic").orElseThrow();
        double plane = BendingTest.momentNmm(design, elastic, sections, 5);
        for (double orientation : new double[] {0, 0.4, 1.1}) {
            assertThat(SpaceBending.of(design, elastic, sections, orientation, 5)
                            .momentNmm())
                    .isCloseTo(plane, within(2e-3 * plane));
        }
        assertThat(SpaceBending.matters(design, sections)).isFalse();
    }

    @Test
    void whereFlutesTurnThreeTimesTheClampChangesTheMomentByAFewPerCentAndByAThirdWhereTheyDoNot() {
        Design often = blade("rhombus", 0.6);
        Design never = blade("rhombus", 0);
        double[] little = SpaceBending.spread(often, STEEL, BladeSections.of(often));
        double[] much = SpaceBending.spread(never, STEEL, BladeSections.of(never));
        assertThat(SpaceBending.matters(often, BladeSections.of(often))).isFalse();
        assertThat(SpaceBending.matters(never, BladeSections.of(never))).isTrue();
        assertThat(little[1] - little[0]).isLessThan(0.15);
        assertThat(much[1] - much[0]).isGreaterThan(0.5);
    }
}
