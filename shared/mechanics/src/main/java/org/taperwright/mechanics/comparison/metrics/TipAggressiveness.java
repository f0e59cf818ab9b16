package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.cutting.Guidance;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/**
 * How hard the tip attacks what lies ahead: 1 for a cutting tip of 75 degrees, less for semi-active, passive and
 * blunter ones; only the order means something.
 */
public final class TipAggressiveness extends DeclaredMetric {
    /** For the service loader. */
    public TipAggressiveness() {
        super(new Declaration(
                "tip-aggressiveness",
                "Tip aggressiveness",
                MetricGroup.GUIDANCE,
                20,
                "",
                Direction.LESS,
                Standing.INDEX,
                "How hard the tip attacks what lies ahead: 1 for a cutting tip of 75 degrees, less for semi-"
                        + "active, passive and blunter ones; only the order means something.",
                "Common practice, no source"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Guidance.tipAggressiveness(assessment.design());
    }
}
