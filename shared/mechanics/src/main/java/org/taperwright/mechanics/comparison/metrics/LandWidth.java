package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Mean width of the radial land behind each edge; lands steady the instrument and lower its cutting. */
public final class LandWidth extends DeclaredMetric {
    /** For the service loader. */
    public LandWidth() {
        super(new Declaration(
                "land-width",
                "Land width",
                MetricGroup.CUTTING,
                90,
                "mm",
                Direction.NEITHER,
                Standing.COMPUTED,
                "Mean width of the radial land behind each edge; lands steady the instrument and lower its cutting.",
                "Geometry of the section"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(assessment.cutting().landWidthMm());
    }
}
