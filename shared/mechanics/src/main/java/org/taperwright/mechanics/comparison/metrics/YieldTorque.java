package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Torque at which the peak shear of the weakest free level reaches the alloy's shear yield. */
public final class YieldTorque extends SampledMetric {
    /** For the service loader. */
    public YieldTorque() {
        super(new Declaration(
                "yield-torque",
                "Torque at first yield",
                MetricGroup.TORSION,
                20,
                "N·mm",
                Direction.MORE,
                Standing.ESTIMATE,
                "Torque at which the peak shear of the weakest free level reaches the alloy's shear yield.",
                "Saint-Venant peak shear with von Mises' shear yield; band from the alloy's yield"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        return assessment.twistingSpread().yieldTorqueNmm();
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.twisting().yieldTorqueNmm();
    }
}
