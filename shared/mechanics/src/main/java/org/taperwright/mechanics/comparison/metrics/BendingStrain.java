package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Greatest strain of any fibre in the bending test at 45 degrees. */
public final class BendingStrain extends SampledMetric {
    /** For the service loader. */
    public BendingStrain() {
        super(new Declaration(
                "bending-strain-45",
                "Greatest strain at 45°",
                MetricGroup.FLEXIBILITY,
                30,
                "%",
                Direction.LESS,
                Standing.ESTIMATE,
                "Greatest strain of any fibre when the chord of the bending test stands at 45 degrees.",
                "Bending test after ISO 3630-1; large-deflection rod with the alloy's stress law"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        return assessment.bendingSpread().greatestStrain().map(strain -> 100 * strain);
    }

    @Override
    public double value(Assessment assessment) {
        return 100 * assessment.bending().greatestStrain();
    }
}
