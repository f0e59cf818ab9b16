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
import org.taperwright.mechanics.properties.HelicalAnalysis;
import org.taperwright.mechanics.properties.HelicalFactors;
import org.taperwright.mechanics.properties.PeakStressFactors;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Outlines;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;

/** A new section's helical factors over the whole range of twist, and their use once known. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 6, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class HelixBenchmark {
    private static final double POISSON = 0.3;

    /** The section's family, with its first parameters. */
    @Param({"square", "triangle", "scalloped", "double-s", "teardrop"})
    public String family = "square";

    private Outline outline = drawn("square");
    private HelicalAnalysis known = HelicalAnalysis.of(outline, POISSON);
    private double angle;

    /** Draws the outline. */
    @Setup
    public void draw() {
        outline = drawn(family);
        known = HelicalAnalysis.of(outline, POISSON);
    }

    /** The factors of a new outline for every twist. */
    @Benchmark
    public HelicalAnalysis newSection() {
        angle += 1e-4;
        return HelicalAnalysis.of(Outlines.turned(outline, angle), POISSON);
    }

    /** The stiffness factors of a known section at a twist. */
    @Benchmark
    public HelicalFactors stiffnessFactors() {
        return known.at(1.3);
    }

    /** The peak-stress factors of a known section at a twist. */
    @Benchmark
    public PeakStressFactors peakStressFactors() {
        return known.peakStressAt(1.3);
    }

    private static Outline drawn(String family) {
        OutlineResult result = Sections.outline(SectionShape.of(family, Map.of()));
        return ((OutlineResult.Drawn) result).outline();
    }
}
