package org.taperwright.mechanics.comparison.metrics;

import java.util.OptionalDouble;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.Glance;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Moment at the clamp, 3 mm from the tip, when the chord to the load 17 mm further on stands at 45 degrees. */
public final class BendingMoment extends SampledMetric {
    /** For the service loader. */
    public BendingMoment() {
        super(new Declaration(
                "bending-moment-45",
                "Bending moment at 45°",
                MetricGroup.FLEXIBILITY,
                20,
                "N·mm",
                Direction.LESS,
                Standing.ESTIMATE,
                "Moment at the clamp, 3 mm from the tip, when the chord to the load 17 mm further on stands at "
                        + "45 degrees.",
                "Bending test after ISO 3630-1; large-deflection rod with the alloy's stress law"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        return assessment.bendingSpread().momentNmm();
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.bending().momentNmm();
    }

    @Override
    public OptionalDouble glance(Glance at) {
        return OptionalDouble.of(at.bendingMomentNmm());
    }
}
