package org.taperwright.benchmarks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.passage.stroke.CanalInWork;
import org.taperwright.shaping.passage.stroke.CanalOutcome;
import org.taperwright.shaping.passage.stroke.Movement;
import org.taperwright.shaping.passage.stroke.ShapingConstants;
import org.taperwright.shaping.passage.stroke.StepWork;
import org.taperwright.shaping.passage.stroke.WorkingInstrument;
import org.taperwright.shaping.placement.rod.MomentLaw;
import org.taperwright.shaping.placement.rod.Rod;
import org.taperwright.shaping.placement.rod.RodSection;

/** Six instruments and 39 strokes in an oval canal of 45 degrees and radius 5 mm. Wanted: 50 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ShapingBenchmark {
    private static final double END_MM = 11.8;

    private final Canal canal = new Canal(
            "benchmark",
            List.of(new CanalPiece(7.07, 0, 0), new CanalPiece(3.93, 45, 0), new CanalPiece(1, 0, 0)),
            List.of(new Opening(0, 1, 0.8, 90), new Opening(6, 0.5, 0.4, 90), new Opening(12, 0.22, 0.2, 90)),
            List.of(),
            0,
            12,
            "",
            "");
    private final List<WorkingInstrument> instruments = List.of(
            instrument(0.10, 0.02),
            instrument(0.14, 0.03),
            instrument(0.18, 0.04),
            instrument(0.20, 0.05),
            instrument(0.25, 0.05),
            instrument(0.30, 0.06));
    private final List<List<Double>> strokes =
            List.of(depths(4), depths(5), depths(6), depths(8, 11.2), depths(8, 10.1, 11.1), depths(8, 10.1, 11.1));

    /** Shapes the canal. */
    @Benchmark
    public CanalOutcome shape() {
        CanalInWork work = CanalInWork.of(canal, 0.1, 72);
        for (int i = 0; i < instruments.size(); i++) {
            StepWork.run(
                    work,
                    instruments.get(i),
                    strokes.get(i),
                    Movement.turned(300, 1),
                    ShapingConstants.USUAL,
                    0.1,
                    Progress.NONE);
        }
        return CanalOutcome.of(work);
    }

    private static List<Double> depths(int count, Double... first) {
        List<Double> depths = new ArrayList<>(List.of(first));
        depths.addAll(Collections.nCopies(count - first.length, END_MM));
        return depths;
    }

    private static WorkingInstrument instrument(double tip, double taper) {
        double blade = 50_000 * 0.3 * Math.PI / 64;
        double end = tip + 16 * taper;
        Rod rod = Rod.of(
                25,
                0,
                16,
                List.of(
                        new RodSection(0, tip, blade, tip),
                        new RodSection(16, end, blade, end),
                        new RodSection(16, end, blade / 0.3, end),
                        new RodSection(26, end, blade / 0.3, end)),
                MomentLaw.LINEAR);
        return new WorkingInstrument(
                rod,
                level -> 700 * 0.6 * Math.PI / 16 * Math.pow(rod.diameterMm(level), 3),
                strain -> Math.pow(strain / 0.7, -2),
                level -> 3,
                level -> 0.1,
                1,
                1);
    }
}
