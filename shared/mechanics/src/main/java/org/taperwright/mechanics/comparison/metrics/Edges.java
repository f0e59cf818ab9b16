package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Number of cutting edges of the section half-way along the working part. */
public final class Edges extends DeclaredMetric {
    /** For the service loader. */
    public Edges() {
        super(new Declaration(
                "edges",
                "Cutting edges",
                MetricGroup.CUTTING,
                60,
                "",
                Direction.NEITHER,
                Standing.COMPUTED,
                "Number of cutting edges of the section half-way along the working part.",
                "Geometry of the section"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(assessment.cutting().edges());
    }
}
