package org.taperwright.benchmarks;

import java.util.Map;
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
import org.taperwright.mechanics.properties.SectionAnalysis;
import org.taperwright.mechanics.properties.helix.HelicalAnalysis;
import org.taperwright.mechanics.properties.helix.HelicalFactors;
import org.taperwright.mechanics.properties.helix.PeakStressFactors;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;

/** The helical factors of a section whose other numbers are known, over the whole range of twists. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class HelixBenchmark {
    /** The section's family, with its first parameters. */
    @Param({"square", "triangle", "scalloped", "double-s", "teardrop"})
    public String family = "square";

    private Outline outline = drawn("square");
    private HelicalFactors known = HelicalAnalysis.of(outline, 0.3);
    private double poisson = 0.3;

    /** Draws the outline and works out its other numbers. */
    @Setup
    public void draw() {
        outline = drawn(family);
        SectionAnalysis.of(outline);
        known = HelicalAnalysis.of(outline, 0.3);
    }

    /** Factors of a Poisson's ratio a little greater than the last, and so never found in the cache. */
    @Benchmark
    public HelicalFactors factors() {
        poisson = poisson > 0.4 ? 0.3 : poisson + 1e-7;
        return HelicalAnalysis.of(outline, poisson);
    }

    /** The factors of a known section at a twist, stiffness alone. */
    @Benchmark
    public double bendingAtATwist() {
        return known.bending(1.3);
    }

    /** The peak-stress factors of a known section at a twist. */
    @Benchmark
    public PeakStressFactors peakStressAtATwist() {
        return known.peakStress(1.3);
    }

    private static Outline drawn(String family) {
        OutlineResult result = Sections.outline(SectionShape.of(family, Map.of()));
        return ((OutlineResult.Drawn) result).outline();
    }
}
