package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Cycles to fracture in the tube of 60 degrees and 5 mm radius over 300 cycles a minute. */
public final class FatigueMinutes extends DeclaredMetric {
    /** For the service loader. */
    public FatigueMinutes() {
        super(new Declaration(
                "time-to-fracture",
                "Time to fracture in a curve",
                MetricGroup.FATIGUE,
                20,
                "min",
                Direction.MORE,
                Standing.ESTIMATE,
                "Cycles to fracture in the tube of 60 degrees and 5 mm radius over 300 cycles a minute.",
                "Cycles to fracture over a usual speed"));
    }

    @Override
    public Reading read(Assessment assessment) {
        Reading seconds = assessment.fatigue().seconds();
        Band band = seconds.band().orElseThrow();
        return new Reading(seconds.value() / 60, Optional.of(new Band(band.low() / 60, band.high() / 60)));
    }
}
