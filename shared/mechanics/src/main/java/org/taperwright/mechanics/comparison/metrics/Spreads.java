package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.spread.BendingSpread;
import org.taperwright.mechanics.bench.spread.TwistingSpread;

/** The sampled bench tests of an assessed design. */
final class Spreads {
    private Spreads() {}

    static BendingSpread bending(Assessment assessment) {
        return BendingSpread.of(assessment.design(), assessment.alloy(), assessment.bending());
    }

    static TwistingSpread twisting(Assessment assessment) {
        return TwistingSpread.of(assessment.design(), assessment.alloy(), assessment.twisting());
    }
}
