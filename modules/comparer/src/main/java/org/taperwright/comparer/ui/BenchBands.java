package org.taperwright.comparer.ui;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.spread.BendingSpread;
import org.taperwright.mechanics.bench.spread.TwistingSpread;

/** A member's bench tests with the alloy's constants drawn; solved in the background. */
record BenchBands(BendingSpread bending, TwistingSpread twisting) {
    static BenchBands of(Assessment assessment) {
        return new BenchBands(assessment.bendingSpread(), assessment.twistingSpread());
    }
}
