package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Angle of the edges from the axis: tan ψ = π d × turns per mm. */
public final class HelixAngle extends DeclaredMetric {
    /** For the service loader. */
    public HelixAngle() {
        super(new Declaration(
                "helix-angle",
                "Helix angle",
                MetricGroup.CUTTING,
                80,
                "°",
                Direction.NEITHER,
                Standing.COMPUTED,
                "Angle of the edges from the axis: tan ψ = π d × turns per mm.",
                "Geometry of a helix, half-way along the working part"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(assessment.cutting().helixAngleDeg());
    }
}
