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
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.TwistingResult;
import org.taperwright.mechanics.bench.TwistingTest;
import org.taperwright.mechanics.comparison.Glance;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.work.Progress;

/** One bending test, one twisting test and one whole assessment of a design whose section is known already. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class AssessmentBenchmark {
    /** The section's family. */
    @Param({"square", "scalloped"})
    public String family = "square";

    private static final Metric MAP_ACROSS = Metrics.find(Metrics.FLEXIBILITY).orElseThrow();
    private static final Metric MAP_UP = Metrics.find(Metrics.CUTTING).orElseThrow();

    private int another;
    private Design design = rotary("square");
    private BladeSections sections = BladeSections.of(design);
    private final Alloy alloy = Alloys.find("niti-superelastic").orElseThrow();

    /** Draws the design and lets its section be computed. */
    @Setup
    public void draw() {
        design = rotary(family);
        sections = BladeSections.of(design);
        assessment();
    }

    /** The bending test with its curve. */
    @Benchmark
    public BendingResult bendingTest() {
        return BendingTest.run(design, alloy, sections);
    }

    /** The moment at 45 degrees alone. */
    @Benchmark
    public double bendingMoment() {
        return BendingTest.momentNmm(design, alloy, sections, BendingTest.ANGLE_DEG);
    }

    /** The twisting test. */
    @Benchmark
    public TwistingResult twistingTest() {
        return TwistingTest.run(design, alloy, sections);
    }

    /** A whole assessment. */
    @Benchmark
    public AssessmentResult assessment() {
        return Assessments.of(design, Progress.NONE);
    }

    /** Flexibility and cutting of another design each time, as of those in the cloud behind the map. */
    @Benchmark
    public Map<Metric, Double> glance() {
        another = (another + 1) % 1_000_000;
        return Glance.values(
                Designs.with(design).tipDiameterMm(0.2 + 1e-7 * another).design(),
                KnownAlloys.SHIPPED,
                List.of(MAP_ACROSS, MAP_UP),
                Progress.NONE);
    }

    private static Design rotary(String family) {
        return new Design(
                "benchmark",
                "",
                0.25,
                List.of(new TaperSegment(0, 16, 0.04)),
                OptionalDouble.empty(),
                25,
                List.of(new SectionStation(0, SectionShape.of(family, Map.of()))),
                List.of(new FluteStation(0, 0.8), new FluteStation(16, 0.5)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, 75),
                "niti-superelastic",
                Making.GROUND,
                Motion.ROTATION);
    }
}
