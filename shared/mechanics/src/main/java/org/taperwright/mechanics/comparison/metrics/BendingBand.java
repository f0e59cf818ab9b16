package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloySpread;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.Unsolved;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.uncertainty.Sensitivity;

/**
 * Bands of what the bending test tells at 45 degrees, by the alloy's modulus, its yield or plateau and all constants of its
 * law: {@link Sensitivity}.
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
        AlloySpread spread = AlloySpread.of(assessment.alloy());
        try {
            Band band = Sensitivity.reading(spread.constants(), values -> test.applyAsDouble(spread.with(values)))
                    .band()
                    .orElseThrow();
            return Optional.of(new Band(Math.min(middle, band.low()), Math.max(middle, band.high())));
        } catch (Unsolved unsolved) {
            return Optional.empty();
        }
    }
}
