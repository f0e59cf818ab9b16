package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.Glance;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.comparison.Saying;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** How readily the instrument bends: one over the moment that bends it to 45 degrees in the bending test. */
public final class Flexibility extends SampledMetric {
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
                "Bending test after ISO 3630-1; large-deflection rod with the alloy's stress law; "
                        + "band from its constants"));
    }

    @Override
    public Optional<Saying> saying() {
        return Optional.of(Saying.as("flexible"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        return assessment.bendingSpread().momentNmm().map(moment -> 1 / moment);
    }

    @Override
    public double value(Assessment assessment) {
        return 1 / assessment.bending().momentNmm();
    }

    @Override
    public OptionalDouble glance(Glance at) {
        return OptionalDouble.of(1 / at.bendingMomentNmm());
    }
}
