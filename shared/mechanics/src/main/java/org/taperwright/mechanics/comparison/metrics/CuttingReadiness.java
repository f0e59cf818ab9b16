package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/**
 * How readily the edges cut by their geometry alone: direction of motion, rake, wedge angle, land and chip space
 * multiplied.
 */
public final class CuttingReadiness extends DeclaredMetric {
    /** For the service loader. */
    public CuttingReadiness() {
        super(new Declaration(
                "cutting",
                "Cutting, provisional",
                MetricGroup.CUTTING,
                10,
                "",
                Direction.MORE,
                Standing.INDEX,
                "How readily the edges cut by their geometry alone: direction of motion, rake, wedge angle, land "
                        + "and chip space multiplied.",
                "Merchant's shear plane and wedge indentation, in the form given with the cutting geometry; no "
                        + "dentine yet"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(assessment.cutting().cuttingIndex());
    }
}
