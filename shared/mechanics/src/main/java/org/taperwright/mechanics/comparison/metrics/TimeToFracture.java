package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Turns to fracture over 300 turns a minute, in a tube of 60° on 5 mm. */
public final class TimeToFracture extends SampledMetric {
    /** For the service loader. */
    public TimeToFracture() {
        super(new Declaration(
                "time-to-fracture",
                "Time to fracture in a curve",
                MetricGroup.FATIGUE,
                20,
                "s",
                Direction.MORE,
                Standing.ESTIMATE,
                "Turns to fracture over 300 turns a minute, in a tube of 60° on 5 mm.",
                "Strain-life law of the alloy; 300 rpm, 60° and 5 mm: common practice, no source"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        double seconds = 60 / assessment.fatigue().speedRpm();
        return assessment.fatigue().life().map(cycles -> cycles * seconds);
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.fatigue().seconds();
    }
}
