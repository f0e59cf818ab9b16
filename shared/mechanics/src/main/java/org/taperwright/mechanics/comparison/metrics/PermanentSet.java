package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Angle of the chord that stays after the bending test; 0 of alloys that spring back. */
public final class PermanentSet extends SampledMetric {
    /** For the service loader. */
    public PermanentSet() {
        super(new Declaration(
                "permanent-set-45",
                "Set after 45°",
                MetricGroup.FLEXIBILITY,
                40,
                "°",
                Direction.NEITHER,
                Standing.ESTIMATE,
                "Angle of the chord that stays when the load of the bending test at 45 degrees is taken away; 0 of alloys "
                        + "whose law springs back.",
                "Bending test after ISO 3630-1 with elastic unloading; band from the alloy's constants"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        return assessment.bendingSpread().setDeg();
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.bending().setDeg().orElse(0);
    }
}
