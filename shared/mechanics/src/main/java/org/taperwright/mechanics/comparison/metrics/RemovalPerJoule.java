package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.comparison.Saying;
import org.taperwright.mechanics.cutting.CuttingResult;
import org.taperwright.mechanics.cutting.CuttingTest;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Dentine removed for the work spent on chips and on rubbing; only its order among blades means something. */
public final class RemovalPerJoule extends SampledMetric {
    /** For the service loader. */
    public RemovalPerJoule() {
        super(new Declaration(
                "removal-per-joule",
                "Removal per joule",
                MetricGroup.CUTTING,
                12,
                "mm³/J",
                Direction.MORE,
                Standing.INDEX,
                "Dentine removed for the work spent on chips and on rubbing; only its order among blades means "
                        + "something.",
                "Oblique cutting by Merchant and Stabler, wedge indentation by Hill; dentine from reviews, from "
                        + "memory"));
    }

    @Override
    public Optional<Saying> saying() {
        return Optional.of(Saying.of("", "the dentine removed per joule"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        return CuttingTest.sampled(assessment.cutting(), assessment.design().motion(), CuttingResult::perJouleMm3);
    }

    @Override
    public double value(Assessment assessment) {
        return CuttingTest.run(assessment.cutting(), assessment.design().motion())
                .perJouleMm3();
    }
}
