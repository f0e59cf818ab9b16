package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.Glance;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.comparison.Saying;
import org.taperwright.mechanics.cutting.CuttingResult;
import org.taperwright.mechanics.cutting.CuttingTest;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/**
 * Dentine removed a second by one millimetre of the blade in its own motion, under a side force of 1 N and at a
 * usual speed; only its order among blades means something.
 */
public final class CuttingEfficiency extends SampledMetric {
    /** For the service loader. */
    public CuttingEfficiency() {
        super(new Declaration(
                "cutting",
                "Cutting efficiency",
                MetricGroup.CUTTING,
                10,
                "mm³/s",
                Direction.MORE,
                Standing.INDEX,
                "Dentine removed a second by one millimetre of the blade in its own motion, under a side force "
                        + "of 1 N and at a usual speed; only its order among blades means something.",
                "Oblique cutting by Merchant and Stabler, wedge indentation by Hill; dentine from reviews, from "
                        + "memory"));
    }

    @Override
    public Optional<Saying> saying() {
        return Optional.of(Saying.of("", "the cutting"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        return CuttingTest.sampled(assessment.cutting(), assessment.design().motion(), CuttingResult::perSecondMm3);
    }

    @Override
    public double value(Assessment assessment) {
        return CuttingTest.run(assessment.cutting(), assessment.design().motion())
                .perSecondMm3();
    }

    @Override
    public OptionalDouble glance(Glance at) {
        return OptionalDouble.of(
                CuttingTest.run(at.cutting(), at.design().motion()).perSecondMm3());
    }
}
