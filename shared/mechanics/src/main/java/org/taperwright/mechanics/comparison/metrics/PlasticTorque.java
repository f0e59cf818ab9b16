package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Torque at which the weakest free level yields all through, without hardening. */
public final class PlasticTorque extends SampledMetric {
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
    public Sampled sampled(Assessment assessment) {
        return assessment.twistingSpread().plasticTorqueNmm();
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.twisting().plasticTorqueNmm();
    }
}
