package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Torque per angle of twist between the tip's held 3 mm and the handle. */
public final class TorsionalStiffness extends DeclaredMetric {
    /** For the service loader. */
    public TorsionalStiffness() {
        super(new Declaration(
                "torsional-stiffness",
                "Torsional stiffness",
                MetricGroup.TORSION,
                10,
                "N·mm/rad",
                Direction.NEITHER,
                Standing.COMPUTED,
                "Torque per angle of twist between the tip's held 3 mm and the handle.",
                "Saint-Venant torsion of each level; twisting test after ISO 3630-1"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(1 / assessment.twisting().twistRadPerNmm());
    }
}
