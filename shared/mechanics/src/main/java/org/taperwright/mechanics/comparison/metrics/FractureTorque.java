package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.alloy.Fracture;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Torque at which the most strained fibre of the weakest free level breaks; its band is that of the alloy's shear
 * strength, to scale. */
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
                "Torque at which the weakest free level breaks in the twisting test.",
                "Twisting test after ISO 3630-1; torque-twist by the alloy's shear law; band from its shear strength"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return ConstantBand.around(
                assessment.twisting().fractureTorqueNmm(), assessment.alloy(), Fracture.SHEAR_STRENGTH);
    }
}
