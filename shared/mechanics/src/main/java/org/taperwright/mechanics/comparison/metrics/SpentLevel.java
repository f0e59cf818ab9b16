package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Distance from the tip of the most strained level in a curve centred 5 mm from the tip. */
public final class SpentLevel extends DeclaredMetric {
    /** For the service loader. */
    public SpentLevel() {
        super(
                new Declaration(
                        "spent-level",
                        "Level that spends most in a curve",
                        MetricGroup.FATIGUE,
                        40,
                        "mm",
                        Direction.NEITHER,
                        Standing.COMPUTED,
                        "Distance from the tip of the most strained level in a curve centred 5 mm from the tip.",
                        "Surface strain d / (2 R) times factors of the turning flutes; 5 mm from the tip: common practice, no source"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(assessment.fatigue().levelMm());
    }
}
