package org.taperwright.benchmarks;

import java.util.List;
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
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.placement.Placement;
import org.taperwright.shaping.placement.PlacementSolver;
import org.taperwright.shaping.placement.Setting;
import org.taperwright.shaping.placement.Springs;
import org.taperwright.shaping.placement.WallSupport;
import org.taperwright.shaping.placement.rod.MomentLaw;
import org.taperwright.shaping.placement.rod.Rod;
import org.taperwright.shaping.placement.rod.RodSection;
import org.taperwright.shaping.placement.rod.RoundPlateau;
import org.taperwright.shaping.placement.rod.SampledLaw;

/** One placement from the canal's axis on: 25/.04 in a canal of 45 degrees and radius 5 mm, to 12 mm. Wanted: 1 ms at 201 nodes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PlacementBenchmark {
    private static final double LENGTH_MM = 20;
    private static final double WORKING_MM = 16;

    /** Number of nodes on the instrument. */
    @Param({"201", "251"})
    public int nodes = 201;

    /** The moment law. */
    @Param({"linear", "superelastic"})
    public String law = "linear";

    private final Canal canal = new Canal(
            "benchmark",
            List.of(new CanalPiece(6.07, 0, 0), new CanalPiece(3.93, 45, 0), new CanalPiece(2, 0, 0)),
            List.of(new Opening(0, 1.2, 1.2, 0), new Opening(6, 0.7, 0.7, 0), new Opening(12, 0.35, 0.35, 0)),
            List.of(),
            0,
            12,
            "",
            "");
    private final Centreline line = Centreline.of(canal.pieces());
    private final WallSupport support = WallSupport.of(Lumen.of(canal, 0.1, 72));
    private PlacementSolver solver = solver();

    /** Makes the solver for the parameters. */
    @Setup
    public void prepare() {
        solver = solver();
    }

    /** Places it. */
    @Benchmark
    public Placement place() {
        return solver.place(line, support, Springs.FIRM, Setting.straight(12));
    }

    private PlacementSolver solver() {
        double blade = 50_000 * 0.3 * Math.PI / 64;
        double shaft = 50_000 * Math.PI / 64;
        MomentLaw moment = law.equals("linear")
                ? MomentLaw.LINEAR
                : SampledLaw.of(new RoundPlateau(50_000, 1500, 25_000, 0.01, 0.06), 0.2, 401);
        Rod rod = Rod.of(
                LENGTH_MM,
                0,
                WORKING_MM,
                List.of(
                        new RodSection(0, 0.25, blade, 0.25),
                        new RodSection(WORKING_MM, 0.89, blade, 0.89),
                        new RodSection(WORKING_MM, 0.9, shaft, 0.9),
                        new RodSection(LENGTH_MM + 1, 0.9, shaft, 0.9)),
                moment);
        return PlacementSolver.of(rod, LENGTH_MM / (nodes - 1), 72);
    }
}
