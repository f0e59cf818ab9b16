package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.AlloyBands;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/**
 * Torque at fracture over torque at first yield, with the tip bound over its last 3 mm: how much more it bears
 * once it begins to unwind.
 */
public final class TorsionalReserve extends DeclaredMetric {
    /** For the service loader. */
    public TorsionalReserve() {
        super(new Declaration(
                "torsional-reserve",
                "Torsional reserve",
                MetricGroup.TORSION,
                60,
                "",
                Direction.MORE,
                Standing.ESTIMATE,
                "Torque at fracture over torque at first yield, with the tip bound over its last 3 mm: how much "
                        + "more it bears once it begins to unwind.",
                "Twisting test after ISO 3630-1 with the alloy's shear curve"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return new AlloyBands(assessment.design(), assessment.alloy()).torsionalReserve(assessment.twisting());
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.twisting().fractureTorqueNmm() / assessment.twisting().yieldTorqueNmm();
    }
}
