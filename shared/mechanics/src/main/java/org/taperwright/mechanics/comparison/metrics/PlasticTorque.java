package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Torque at which the weakest free level yields all through, without hardening. */
public final class PlasticTorque extends DeclaredMetric {
    /** For the service loader. */
    public PlasticTorque() {
        super(new Declaration(
                "plastic-torque",
                "Fully plastic torque",
                MetricGroup.TORSION,
                30,
                "N·mm",
                Direction.MORE,
                Standing.ESTIMATE,
                "Torque at which the weakest free level yields all through, without hardening.",
                "Nadai's sand heap with von Mises' shear yield; band from the alloy's yield"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return YieldBand.around(assessment.twisting().plasticTorqueNmm(), assessment.alloy());
    }
}
