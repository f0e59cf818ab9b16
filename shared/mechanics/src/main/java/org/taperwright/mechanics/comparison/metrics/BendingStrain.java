package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Greatest strain of any fibre in the bending test at 45 degrees. */
public final class BendingStrain extends DeclaredMetric {
    /** For the service loader. */
    public BendingStrain() {
        super(new Declaration(
                "bending-strain-45",
                "Greatest strain at 45°",
                MetricGroup.FLEXIBILITY,
                30,
                "%",
                Direction.LESS,
                Standing.ESTIMATE,
                "Greatest equivalent strain of the surface at 45 degrees, the mean over one diameter, the flutes' turning counted.",
                "Bending test after ISO 3630-1; large-deflection rod with the alloy's stress law, peak-stress factor of the twisted bar "
                        + "(not yet confirmed by a solid model)"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return new Reading(
                100 * assessment.bending().greatestStrain(),
                BendingBand.ofStrain(assessment).map(band -> new Band(100 * band.low(), 100 * band.high())));
    }

    @Override
    public double value(Assessment assessment) {
        return 100 * assessment.bending().greatestStrain();
    }
}
