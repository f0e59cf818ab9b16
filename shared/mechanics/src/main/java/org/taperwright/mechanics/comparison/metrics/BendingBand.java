package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.Unsolved;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.quantity.Band;

/**
 * Bands of what the bending test tells at 45 degrees: the test run again with Young's modulus and the yield or plateau stress moved together
 * to both ends of their bands, which is wider than if they varied apart; the law's other constants are held.
 */
final class BendingBand {
    private BendingBand() {}

    /** The moment's band, N mm; none where the test has no solution at one of the ends. */
    static Optional<Band> ofMoment(Assessment assessment) {
        return of(
                assessment,
                assessment.bending().momentNmm(),
                alloy -> BendingTest.momentNmm(
                        assessment.design(), alloy, BladeSections.of(assessment.design()), BendingTest.ANGLE_DEG));
    }

    /** The band of the greatest strain of any fibre; none where the test has no solution at one of the ends. */
    static Optional<Band> ofStrain(Assessment assessment) {
        return of(
                assessment,
                assessment.bending().greatestStrain(),
                alloy -> BendingTest.run(assessment.design(), alloy, BladeSections.of(assessment.design()))
                        .greatestStrain());
    }

    private static Optional<Band> of(Assessment assessment, double middle, ToDoubleFunction<Alloy> test) {
        Alloy alloy = assessment.alloy();
        Band young = alloy.youngBand();
        Band yield = alloy.yieldBand();
        try {
            double soft = test.applyAsDouble(alloy.with(young.low(), yield.low()));
            double stiff = test.applyAsDouble(alloy.with(young.high(), yield.high()));
            return Optional.of(
                    new Band(Math.min(middle, Math.min(soft, stiff)), Math.max(middle, Math.max(soft, stiff))));
        } catch (Unsolved unsolved) {
            return Optional.empty();
        }
    }
}
