package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.AlloyBands;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Angle turned between the handle and the tip, bound over its last 3 mm, up to fracture. */
public final class FractureAngle extends DeclaredMetric {
    /** For the service loader. */
    public FractureAngle() {
        super(new Declaration(
                "fracture-angle",
                "Angle at fracture",
                MetricGroup.TORSION,
                50,
                "°",
                Direction.MORE,
                Standing.ESTIMATE,
                "Angle turned between the handle and the tip, bound over its last 3 mm, up to fracture.",
                "Twisting test after ISO 3630-1; shear strain at fracture of the alloy, low confidence"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return new AlloyBands(assessment.design(), assessment.alloy()).fractureAngle();
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.twisting().fractureAngleDeg();
    }
}
