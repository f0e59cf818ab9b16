package org.taperwright.mechanics.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.lifecycle.AfterContainer;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.cutting.CuttingTest;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.fatigue.Damage;
import org.taperwright.mechanics.fatigue.Exposure;
import org.taperwright.mechanics.fatigue.Fatigue;
import org.taperwright.mechanics.fatigue.Tube;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/**
 * From a design of any kind to every metric: numbers, or faults in words. The long sweep runs in the profile {@code sweep}
 * and writes the processor time of the slowest design to its output; no time is asserted, a watchdog of a minute only
 * ends what would never end.
 */
class SweepTest {
    private static final Duration WATCHDOG = Duration.ofMinutes(1);
    /** Designs at the start whose time is that of code not yet compiled. */
    private static final int COLD = 30;

    private static final SweepRecord RECORD = new SweepRecord(COLD);

    @Provide
    Arbitrary<AnyDesign> designs() {
        return Arbitraries.randomValue(Random::nextLong).map(AnyDesign::of);
    }

    @Property(tries = 15, seed = "1", edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void aDesignGivesNumbersOrFaults(@ForAll("designs") AnyDesign any) {
        held(any);
    }

    @Tag("sweep")
    @Property(tries = 3000, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void everyDesignGivesNumbersOrFaults(@ForAll("designs") AnyDesign any) {
        held(any);
    }

    private static void held(AnyDesign any) {
        assertTimeoutPreemptively(WATCHDOG, () -> hold(any), any::toString);
    }

    static void hold(AnyDesign any) {
        long start = processorNanos();
        AssessmentResult result = Assessments.of(any.design(), Progress.NONE);
        long assessed = processorNanos() - start;
        if (result instanceof AssessmentResult.Refused refused) {
            assertThat(refused.faults()).anyMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE);
            refused.faults().forEach(fault -> spoken(fault, any));
            RECORD.refused(any, assessed);
        } else if (result instanceof AssessmentResult.Assessed known) {
            Assessment assessment = known.assessment();
            for (Metric metric : Metrics.all()) {
                Finite.check(any + ": " + metric.id(), metric.read(assessment));
            }
            long read = processorNanos() - start;
            Finite.check(any.toString(), assessment);
            assessment.remarks().forEach(fault -> spoken(fault, any));
            elsewhere(any, assessment);
            RECORD.assessed(any, assessed, read);
        }
    }

    private static void elsewhere(AnyDesign any, Assessment assessment) {
        Random random = new Random(any.seed());
        for (Motion motion : Motion.values()) {
            Finite.check(any + ": " + motion, CuttingTest.run(assessment.cutting(), motion));
        }
        Tube tube = new Tube(
                AnyDesign.corner(random, 1, 180),
                AnyDesign.corner(random, 0.5, 100),
                AnyDesign.corner(random, 0, 40),
                AnyDesign.corner(random, 0, 1));
        Finite.check(any + " in " + tube, Fatigue.in(tube, assessment.design(), assessment.alloy(), Fatigue.USUAL_RPM));
        List<Exposure> past =
                Fatigue.along(tube, assessment.design(), assessment.alloy(), BladeSections.of(assessment.design()))
                        .stream()
                        .map(level -> new Exposure(
                                level.strain(), 100, assessment.design().motion()))
                        .toList();
        Finite.check(any + ": damage", Damage.spent(past, assessment.alloy()));
    }

    private static void spoken(Fault fault, AnyDesign any) {
        assertThat(fault.sentence()).as(any.toString()).doesNotContain("NaN").doesNotContain("Infinity");
    }

    private static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    @AfterContainer
    static void say() {
        System.out.println(RECORD);
    }
}
