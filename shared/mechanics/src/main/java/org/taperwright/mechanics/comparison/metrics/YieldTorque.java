package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Torque at which the peak shear of the weakest free level reaches the alloy's shear yield. */
public final class YieldTorque extends DeclaredMetric {
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
                "Saint-Venant peak shear times the twisted bar's factor (not yet confirmed by a solid model), von Mises' shear "
                        + "yield; band from the alloy's yield"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return YieldBand.around(assessment.twisting().yieldTorqueNmm(), assessment.alloy());
    }
}
