package org.taperwright.benchmarks;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.work.Progress;

/**
 * Every metric of a design with its band. The taper differs a little each time, so no bending curve of a band is found in a
 * cache for it; the curves of the alloy's other constants are, as when one design is edited.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class BandBenchmark {
    /** The section's family. */
    @Param({"square", "scalloped"})
    public String family = "square";

    private int count;

    /** An assessment alone. */
    @Benchmark
    public Assessment assessment() {
        return assessed();
    }

    /** An assessment and the values of all metrics, no bands. */
    @Benchmark
    public List<Double> values() {
        Assessment assessment = assessed();
        return Metrics.all().stream().map(metric -> metric.value(assessment)).toList();
    }

    /** An assessment and all metrics with their bands. */
    @Benchmark
    public List<Reading> bands() {
        Assessment assessment = assessed();
        return Metrics.all().stream().map(metric -> metric.read(assessment)).toList();
    }

    private Assessment assessed() {
        count = (count + 1) % 1000;
        Design design = new Design(
                "benchmark",
                "",
                0.25,
                List.of(new TaperSegment(0, 16, 0.04 + count * 1e-6)),
                OptionalDouble.empty(),
                25,
                List.of(new SectionStation(0, SectionShape.of(family, Map.of()))),
                List.of(new FluteStation(0, 0.8), new FluteStation(16, 0.5)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, 75),
                "niti-superelastic",
                Making.GROUND,
                Motion.ROTATION);
        return ((AssessmentResult.Assessed) Assessments.of(design, Progress.NONE)).assessment();
    }
}
