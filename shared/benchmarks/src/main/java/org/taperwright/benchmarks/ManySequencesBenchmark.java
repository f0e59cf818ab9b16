package org.taperwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.preset.CanalPresets;
import org.taperwright.shaping.canal.preset.PresetDraw;
import org.taperwright.shaping.finish.Finish;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.shaping.passage.stroke.CanalInWork;
import org.taperwright.shaping.passage.stroke.Mesh;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.passage.stroke.SequenceShaping;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.ShapingConstants;
import org.taperwright.shaping.passage.stroke.StrokePlan;
import org.taperwright.shaping.population.PopulationShaping;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

/**
 * Six instruments and 39 strokes in a mesiobuccal canal of a lower molar, its root's outline given, on all processors. Wanted on two: bands of
 * 200 samples 10 s, 1,000 canals 60 s.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 2)
@Fork(1)
public class ManySequencesBenchmark {
    private static final int[] STROKES = {4, 5, 6, 8, 8, 8};

    /** Number of samples. */
    @Param({"40", "200"})
    public int samples = LatinHypercube.SAMPLES;

    private final Canal canal =
            PresetDraw.average(CanalPresets.find("lower-molar-mb").orElseThrow());
    private final PreparedSequence prepared = PreparedSequence.of(sequence());
    private final ShapedSequence shaped =
            SequenceShaping.of(prepared, canal, ShapingConstants.USUAL, StrokePlan.USUAL, Mesh.FINE, Progress.NONE);

    /** The sequence once, on the fine mesh. */
    @Benchmark
    public ShapedSequence once() {
        return SequenceShaping.of(
                prepared, canal, ShapingConstants.USUAL, StrokePlan.USUAL, Mesh.FINE, Progress.NONE);
    }

    /** Its bands. */
    @Benchmark
    public ShapingBands bands() {
        return ShapingBands.of(prepared, shaped, samples, Progress.NONE);
    }

    /** The sequence in five canals for each sample. */
    @Benchmark
    public PopulationShaping population() {
        return PopulationShaping.of(
                prepared,
                PresetDraw.population(
                        CanalPresets.find("lower-molar-mb").orElseThrow(), 5 * samples, LatinHypercube.SEED),
                Progress.NONE);
    }

    /** Needles and cones of the canal as it was. */
    @Benchmark
    public Finish finish() {
        CanalInWork work = CanalInWork.of(canal, Mesh.FINE.spacingMm(), Mesh.FINE.directions());
        return Finish.of(work, canal.endDepthMm(), Progress.NONE);
    }

    private ArrangedSequence sequence() {
        List<Step> steps = new ArrayList<>();
        List<Optional<Instrument>> instruments = new ArrayList<>();
        int[] sizes = {10, 14, 18, 20, 25, 30};
        double[] tapers = {0.02, 0.03, 0.04, 0.05, 0.05, 0.06};
        for (int i = 0; i < sizes.length; i++) {
            steps.add(new InstrumentStep(
                    new ThingId("i" + i),
                    canal.workingLengthMm(),
                    Motion.ROTATION,
                    Optional.of(300.0),
                    Optional.of(20.0),
                    STROKES[i],
                    ""));
            instruments.add(Optional.of(instrument(sizes[i], tapers[i])));
        }
        Sequence sequence = new Sequence("benchmark", Optional.empty(), Optional.empty(), steps, "");
        return new ArrangedSequence(sequence, canal, Optional.empty(), instruments);
    }

    private static Instrument instrument(int size, double taper) {
        Design design = new Design(
                "benchmark",
                "",
                size / 100.0,
                List.of(new TaperSegment(0, 16, taper)),
                OptionalDouble.empty(),
                25,
                List.of(new SectionStation(0, SectionShape.of("triangle", Map.of()))),
                List.of(new FluteStation(0, 0.8)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, 60),
                "niti-superelastic",
                Making.GROUND,
                Motion.ROTATION);
        return new Instrument(
                "benchmark",
                "",
                "",
                "file",
                Drive.POWERED,
                design,
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                0,
                "");
    }
}
