package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Cutting edges that cross a line parallel to the axis, per mm; few suit reaming, many suit filing. */
public final class FlutesPerMm extends DeclaredMetric {
    /** For the service loader. */
    public FlutesPerMm() {
        super(new Declaration(
                "flutes-per-mm",
                "Flutes per mm",
                MetricGroup.CUTTING,
                70,
                "1/mm",
                Direction.NEITHER,
                Standing.COMPUTED,
                "Cutting edges that cross a line parallel to the axis, per mm; few suit reaming, many suit filing.",
                "Definition of the design, half-way along the working part"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(assessment.cutting().flutesPerMm());
    }
}
