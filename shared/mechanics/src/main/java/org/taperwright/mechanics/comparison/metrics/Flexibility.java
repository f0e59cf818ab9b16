package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.AlloyBands;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** How readily the instrument bends: one over the moment that bends it to 45 degrees in the bending test. */
public final class Flexibility extends DeclaredMetric {
    /** For the service loader. */
    public Flexibility() {
        super(new Declaration(
                "flexibility",
                "Flexibility",
                MetricGroup.FLEXIBILITY,
                10,
                "1/(N·mm)",
                Direction.MORE,
                Standing.ESTIMATE,
                "How readily the instrument bends: one over the moment that bends it to 45 degrees in the "
                        + "bending test.",
                "Bending test after ISO 3630-1; large-deflection rod with the alloy's stress-strain curve"));
    }

    @Override
    public Reading read(Assessment assessment) {
        Reading moment = new AlloyBands(assessment.design(), assessment.alloy()).bendingMoment();
        Band band = moment.band().orElseThrow();
        return new Reading(1 / moment.value(), Optional.of(new Band(1 / band.high(), 1 / band.low())));
    }

    @Override
    public double value(Assessment assessment) {
        return 1 / assessment.bending().momentNmm();
    }
}
