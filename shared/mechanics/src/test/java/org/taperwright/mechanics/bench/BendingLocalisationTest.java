package org.taperwright.mechanics.bench;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

/** Bending beyond the elastic range spreads over a length instead of gathering in one cross-section. */
class BendingLocalisationTest {
    @Provide
    Arbitrary<Alloy> alloys() {
        return Arbitraries.of(Alloys.all());
    }

    @Provide
    Arbitrary<String> families() {
        return Arbitraries.of("square", "triangle", "rhombus", "scalloped");
    }

    @Property(tries = 60)
    void theBendingTakesMoreThanAQuarterOfADiameter(
            @ForAll("families") String family,
            @ForAll("alloys") Alloy alloy,
            @ForAll @DoubleRange(min = 0.08, max = 0.8) double tip,
            @ForAll @DoubleRange(min = 0, max = 0.08) double taper) {
        Design design = BenchDesigns.of(family, tip, taper);
        BendingResult result = BendingTest.run(design, alloy, BladeSections.of(design));
        assertThat(result.momentNmm()).isFinite().isPositive();
        assertThat(result.greatestStrain()).isFinite().isBetween(0.0, ofQuarterHinge(result));
        result.setDeg().ifPresent(set -> assertThat(set).isBetween(-1e-9, BendingTest.ANGLE_DEG));
    }

    /** All of the slope within d/4, the strain {@code (d/2) slope / (d/4)}: on less, no section would stay plane. */
    private static double ofQuarterHinge(BendingResult result) {
        return 2 * Math.toRadians(result.endSlopeDeg());
    }
}
