package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Mean angle of material at the cutting edges; a sharper wedge sinks deeper at the same force. */
public final class WedgeAngle extends DeclaredMetric {
    /** For the service loader. */
    public WedgeAngle() {
        super(new Declaration(
                "wedge-angle",
                "Wedge angle",
                MetricGroup.CUTTING,
                40,
                "°",
                Direction.LESS,
                Standing.COMPUTED,
                "Mean angle of material at the cutting edges; a sharper wedge sinks deeper at the same force.",
                "Geometry of the section"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(assessment.cutting().wedgeDeg());
    }
}
