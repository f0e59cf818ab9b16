package org.taperwright.mechanics.assessment;

import org.taperwright.mechanics.bench.spread.BendingSpread;
import org.taperwright.mechanics.bench.spread.TwistingSpread;

/** Both bench tests of a design with the alloy's constants drawn; solved on making it, so not on an event thread. */
public record BenchBands(BendingSpread bending, TwistingSpread twisting) {
    /** Those of an assessed design. */
    public static BenchBands of(Assessment assessment) {
        return new BenchBands(assessment.bendingSpread(), assessment.twistingSpread());
    }
}
