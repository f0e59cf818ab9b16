package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.AlloyBands;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Torque at which the most strained fibre of the weakest free level breaks, with the tip bound over its last 3 mm. */
public final class FractureTorque extends DeclaredMetric {
    /** For the service loader. */
    public FractureTorque() {
        super(new Declaration(
                "fracture-torque",
                "Torque at fracture",
                MetricGroup.TORSION,
                40,
                "N·mm",
                Direction.MORE,
                Standing.ESTIMATE,
                "Torque at which the most strained fibre of the weakest free level breaks, with the tip bound "
                        + "over its last 3 mm.",
                "Twisting test after ISO 3630-1; shear curve of the alloy up to its shear strain at fracture"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return new AlloyBands(assessment.design(), assessment.alloy()).fractureTorque(assessment.twisting());
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.twisting().fractureTorqueNmm();
    }
}
