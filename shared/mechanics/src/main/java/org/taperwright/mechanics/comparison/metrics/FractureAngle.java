package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.alloy.Fracture;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Angle turned at fracture; nearly proportional to the alloy's shear strain at fracture, whose band it takes to scale. */
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
                "Angle turned at the handle's beginning when the weakest free level breaks.",
                "Twisting test after ISO 3630-1; band from the shear strain at fracture, of which little is known"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return ConstantBand.around(assessment.twisting().fractureAngleDeg(), assessment.alloy(), Fracture.SHEAR_STRAIN);
    }
}
