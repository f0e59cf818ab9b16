package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.Unsolved;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.quantity.Band;

/**
 * Band of the moment at 45 degrees: the test run again with Young's modulus and the yield or plateau stress moved together
 * to both ends of their bands, which is wider than if they varied apart; the law's other constants are held.
 */
final class MomentBand {
    private MomentBand() {}

    /** The band, N mm; none where the test has no solution at one of the ends. */
    static Optional<Band> of(Assessment assessment) {
        Alloy alloy = assessment.alloy();
        try {
            double low = moment(assessment, alloy.with(alloy.youngBand().low(), alloy.yieldBand().low()));
            double high = moment(assessment, alloy.with(alloy.youngBand().high(), alloy.yieldBand().high()));
            double middle = assessment.bending().momentNmm();
            return Optional.of(new Band(Math.min(low, middle), Math.max(high, middle)));
        } catch (Unsolved unsolved) {
            return Optional.empty();
        }
    }

    private static double moment(Assessment assessment, Alloy alloy) {
        return BendingTest.momentNmm(
                assessment.design(), alloy, BladeSections.of(assessment.design()), BendingTest.ANGLE_DEG);
    }
}
