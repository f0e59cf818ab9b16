package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.TwistingResult;
import org.taperwright.mechanics.bench.TwistingTest;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

/** Orders that bench and finite-element studies of sections found; their numbers were not recovered, so order only. */
class SectionStudiesTest {
    private static final Alloy NITI = Alloys.find("niti-superelastic").orElseThrow();

    private static double bending(String section, Alloy alloy) {
        Design design = ReferenceDesigns.of(ReferenceDesigns.shape(section), 0.25, 0.04, 0.5);
        return BendingTest.run(design, alloy, BladeSections.of(design)).momentNmm();
    }

    private static TwistingResult twisting(String section, Alloy alloy) {
        Design design = ReferenceDesigns.of(ReferenceDesigns.shape(section), 0.25, 0.04, 0.5);
        return TwistingTest.run(design, alloy, BladeSections.of(design));
    }

    /** Turpin and others, J Endod 2000;26:414; Berutti and others, J Endod 2003;29:15 (both from memory, medium). */
    @Test
    void aThreeFluteSectionWithLandsIsMoreFlexibleThanAConvexTriangleAndMoreStressedByTheSameTorque() {
        assertThat(bending("u_flute", NITI)).isLessThan(bending("convex_triangle", NITI));
        assertThat(twisting("u_flute", NITI).yieldTorqueNmm())
                .isLessThan(twisting("convex_triangle", NITI).yieldTorqueNmm());
    }

    /** Schaefer and Tepel, J Endod 2001;27:299 (from memory, medium): NiTi bends most easily, whatever the section. */
    @Test
    void nickelTitaniumOfAStiffSectionBendsMoreEasilyThanSteelOfAFlexibleOne() {
        Alloy steel = Alloys.find("stainless-steel").orElseThrow();
        assertThat(bending("square", NITI)).isLessThan(bending("triangle", steel));
    }

    /** Walia, Brantley and Gerstein, J Endod 1988;14:346 (from memory, high): two to three times; at least two here. */
    @Test
    void nickelTitaniumIsAtLeastTwiceAsFlexibleAsSteelOfTheSameSection() {
        Alloy steel = Alloys.find("stainless-steel").orElseThrow();
        assertThat(bending("square", steel) / bending("square", NITI)).isGreaterThan(2);
        assertThat(twisting("square", NITI).twistRadPerNmm()
                        / twisting("square", steel).twistRadPerNmm())
                .isGreaterThan(2);
    }

    /** Thu and others, Appl Sci 2021;11:3079 (abstract read): a convex triangle and a large size raise the torque. */
    @Test
    void aConvexTriangleBearsMoreTorqueThanAStraightOne() {
        assertThat(twisting("convex_triangle", NITI).plasticTorqueNmm())
                .isGreaterThan(twisting("triangle", NITI).plasticTorqueNmm());
    }
}
