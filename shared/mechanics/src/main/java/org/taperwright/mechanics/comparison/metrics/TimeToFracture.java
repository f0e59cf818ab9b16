package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Turns to fracture over 300 turns a minute, in a tube of 60° on 5 mm. */
public final class TimeToFracture extends DeclaredMetric {
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
    public Reading read(Assessment assessment) {
        return new Reading(
                assessment.fatigue().seconds(), Optional.of(assessment.fatigue().secondsBand()));
    }
}
