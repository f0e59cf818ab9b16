package org.taperwright.mechanics.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

/** The greatest strain at 45 degrees where steel gives way in a hinge. */
class HingeStrainTest {
    private static final Alloy STEEL = Alloys.find("stainless-steel").orElseThrow();

    /** By hand: strain 0.1 (1 - x/2) over 2 mm from one end, else 0; over 1 mm at that end its mean is 0.075. */
    @Test
    void theMeanIsTakenOverOneDiameterWhereItIsGreatest() {
        Design design = BenchDesigns.of("square", 0.3, 0.02);
        RodGrid grid = RodGrid.between(design, 3, 20, 0.125);
        double[] strain = new double[grid.nodes()];
        double[] length = new double[grid.nodes()];
        for (int node = 0; node < strain.length; node++) {
            strain[node] = 0.1 * Math.max(0, 1 - (grid.levelMm(node) - 3) / 2);
            length[node] = 1;
        }
        StretchMean mean = StretchMean.greatest(grid, strain, length);
        assertThat(mean.value()).isCloseTo(0.075, within(1e-4));
        assertThat(mean.levelMm()).isCloseTo(3.5, within(1e-6));
    }

    @Test
    void halfTheStepChangesTheStrainByLessThanTwoPerCent() {
        for (double tip : List.of(0.15, 0.25, 0.4)) {
            Design design = BenchDesigns.of("square", tip, 0.02);
            BladeSections sections = BladeSections.of(design);
            double coarse = BendingTest.run(design, STEEL, sections, 0.125).greatestStrain();
            double fine = BendingTest.run(design, STEEL, sections, 0.0625).greatestStrain();
            assertThat(coarse / fine).isCloseTo(1, within(0.02));
        }
    }

    /** All the chord's 45 degrees and more are turned within the rod: the mean strain of a diameter is at most d/2 slope/d. */
    @Test
    void theStrainIsNoMoreThanThatOfAllTheSlopeWithinOneDiameter() {
        Design design = BenchDesigns.of("square", 0.25, 0.02);
        BendingResult result = BendingTest.run(design, STEEL, BladeSections.of(design));
        assertThat(result.greatestStrain()).isBetween(0.01, Math.toRadians(result.endSlopeDeg()) / 2 * 1.1);
    }
}
