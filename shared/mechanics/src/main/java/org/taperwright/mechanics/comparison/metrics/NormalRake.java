package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Rake in the plane across the edge, where the flutes stand at their helix angle: tan αn = tan α cos ψ. */
public final class NormalRake extends DeclaredMetric {
    /** For the service loader. */
    public NormalRake() {
        super(new Declaration(
                "normal-rake",
                "Rake across the edge",
                MetricGroup.CUTTING,
                30,
                "°",
                Direction.MORE,
                Standing.COMPUTED,
                "Rake in the plane across the edge, where the flutes stand at their helix angle: tan αn = tan α "
                        + "cos ψ.",
                "Geometry of oblique cutting edges"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(assessment.cutting().normalRakeDeg());
    }
}
