package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/**
 * Turns, or to-and-fro cycles, up to fracture in a plain tube of 60 degrees and 5 mm radius, by the alloy's
 * strain-life law.
 */
public final class FatigueCycles extends DeclaredMetric {
    /** For the service loader. */
    public FatigueCycles() {
        super(new Declaration(
                "cycles-to-fracture",
                "Cycles to fracture in a curve",
                MetricGroup.FATIGUE,
                10,
                "",
                Direction.MORE,
                Standing.ESTIMATE,
                "Turns, or to-and-fro cycles, up to fracture in a plain tube of 60 degrees and 5 mm radius, by "
                        + "the alloy's strain-life law.",
                "Strain-life law of the alloy; tube by common practice"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return assessment.fatigue().cycles();
    }
}
