package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/**
 * Diameter of the largest circle about the axis inside the section, over the instrument's diameter; a thin core
 * bends and breaks more easily.
 */
public final class CoreShare extends DeclaredMetric {
    /** For the service loader. */
    public CoreShare() {
        super(new Declaration(
                "core-share",
                "Core share",
                MetricGroup.GUIDANCE,
                10,
                "%",
                Direction.NEITHER,
                Standing.COMPUTED,
                "Diameter of the largest circle about the axis inside the section, over the instrument's "
                        + "diameter; a thin core bends and breaks more easily.",
                "Geometry of the section at the tip's end of the blade"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(100 * assessment.stations().get(0).properties().core());
    }
}
