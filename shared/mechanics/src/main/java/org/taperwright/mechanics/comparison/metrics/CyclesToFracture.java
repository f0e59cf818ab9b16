package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.comparison.Saying;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Turns to fracture in the usual tube; ten million stands for as many or more. */
public final class CyclesToFracture extends SampledMetric {
    /** For the service loader. */
    public CyclesToFracture() {
        super(new Declaration(
                "cycles-to-fracture",
                "Turns to fracture in a curve",
                MetricGroup.FATIGUE,
                10,
                "",
                Direction.MORE,
                Standing.ESTIMATE,
                "Turns to fracture in a tube of 60° on 5 mm by N = n (3 % / strain)^(1/beta), at most ten million.",
                "Strain-life law of the alloy, from few published numbers; 60° on 5 mm: common practice, no source"));
    }

    @Override
    public Optional<Saying> saying() {
        return Optional.of(Saying.of("lasts", "the turns in a curve"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        return assessment.fatigue().life();
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.fatigue().cycles();
    }
}
