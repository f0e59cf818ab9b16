package org.taperwright.benchmarks;

import java.util.List;
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
import org.taperwright.mechanics.properties.SectionProperties;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Outlines;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;

/** A new section: its numbers and its edges, never met before and so never found in the cache. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SectionBenchmark {
    /** The section's family, with its first parameters. */
    @Param({"square", "triangle", "scalloped", "double-s", "teardrop"})
    public String family = "square";

    private Outline outline = drawn("square");
    private double angle;

    /** Draws the outline. */
    @Setup
    public void draw() {
        outline = drawn(family);
    }

    /** All numbers of a new outline. */
    @Benchmark
    public SectionProperties properties() {
        return SectionAnalysis.of(fresh());
    }

    /** The edges of an outline. */
    @Benchmark
    public List<Edge> edges() {
        return Sections.edges(fresh(), Hand.CLOCKWISE);
    }

    /** The same outline turned on a little, which makes it another. */
    private Outline fresh() {
        angle += 1e-4;
        return Outlines.turned(outline, angle);
    }

    private static Outline drawn(String family) {
        OutlineResult result = Sections.outline(SectionShape.of(family, Map.of()));
        return ((OutlineResult.Drawn) result).outline();
    }
}
