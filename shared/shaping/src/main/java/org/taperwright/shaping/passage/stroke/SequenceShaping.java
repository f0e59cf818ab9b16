package org.taperwright.shaping.passage.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.placement.Entry;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Patency;

/**
 * Runs a sequence in a canal, step by step. A step whose instrument cannot be brought to its depth does nothing: it is a fault with
 * the level and the reason, and the steps after it work in the canal as those before it left it.
 */
public final class SequenceShaping {
    /** A motor's speed where a step names none, rev/min (common practice, no source). */
    private static final double USUAL_RPM = 300;

    private final PreparedSequence prepared;
    private final ShapingConstants constants;
    private final StrokePlan plan;
    private final Mesh mesh;
    private final Watch watch;
    private final SortedMap<Integer, StepOutcome> steps = new TreeMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private SequenceShaping(
            PreparedSequence prepared, ShapingConstants constants, StrokePlan plan, Mesh mesh, Watch watch) {
        this.prepared = prepared;
        this.constants = constants;
        this.plan = plan;
        this.mesh = mesh;
        this.watch = watch;
    }

    /** A sequence with dentine and strokes as usual. */
    public static ShapedSequence of(ArrangedSequence arranged, Progress progress) {
        return of(arranged, ShapingConstants.USUAL, StrokePlan.USUAL, progress);
    }

    /** A sequence with constants and strokes as given. */
    public static ShapedSequence of(
            ArrangedSequence arranged, ShapingConstants constants, StrokePlan plan, Progress progress) {
        return of(PreparedSequence.of(arranged), arranged.canal(), constants, plan, Mesh.FINE, progress);
    }

    /** A sequence that has been made ready, in a canal that need not be its own. */
    public static ShapedSequence of(
            PreparedSequence prepared,
            Canal canal,
            ShapingConstants constants,
            StrokePlan plan,
            Mesh mesh,
            Progress progress) {
        List<Fault> impossible = impossible(canal);
        if (!impossible.isEmpty()) {
            return new ShapedSequence(new TreeMap<>(), Optional.empty(), impossible);
        }
        CanalInWork work = CanalInWork.of(canal, mesh.spacingMm(), mesh.directions());
        return run(prepared, work, constants, plan, mesh, progress);
    }

    /** The same in a canal in work, which is left as the steps leave it. */
    public static ShapedSequence run(
            PreparedSequence prepared,
            CanalInWork canal,
            ShapingConstants constants,
            StrokePlan plan,
            Mesh mesh,
            Progress progress) {
        return run(prepared, canal, constants, plan, mesh, (place, now, inner) -> {}, progress);
    }

    /** The same, watched. */
    public static ShapedSequence run(
            PreparedSequence prepared,
            CanalInWork canal,
            ShapingConstants constants,
            StrokePlan plan,
            Mesh mesh,
            Watch watch,
            Progress progress) {
        return new SequenceShaping(prepared, constants, plan, mesh, watch).run(canal, progress);
    }

    /** Sees the canal before each step, as the steps before it left it. */
    public interface Watch {
        /** Looks at the canal, and leaves it as it is. */
        void before(int place, CanalInWork canal, Progress progress);
    }

    /** What makes a canal impossible; where is "canal.field". */
    public static List<Fault> impossible(Canal canal) {
        return CanalGeometry.check(canal).stream()
                .filter(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                .map(fault -> new Fault(fault.weight(), "canal." + fault.where(), fault.what(), fault.expected()))
                .toList();
    }

    private ShapedSequence run(CanalInWork canal, Progress progress) {
        faults.addAll(prepared.faults());
        int count = prepared.instruments().size();
        for (int i = 0; i < count; i++) {
            progress.at((double) i / count, "step " + (i + 1) + " of " + count);
            progress.check();
            int index = i;
            watch.before(i, canal, progress);
            prepared.instruments().get(i).ifPresent(instrument -> step(index, instrument, canal, progress));
        }
        return new ShapedSequence(steps, Optional.of(CanalOutcome.of(canal)), faults);
    }

    private void step(int index, WorkingInstrument whole, CanalInWork canal, Progress progress) {
        Working working = prepared.arranged().working(index).orElseThrow();
        InstrumentStep step = working.step();
        double depth = canal.geometry().depthOfMm(step.depthMm());
        double beyond = prepared.arranged().step(index) instanceof Patency
                ? Math.max(0, depth - canal.geometry().lengthMm())
                : 0;
        WorkingInstrument instrument = beyond > 0 ? whole.above(beyond) : whole;
        double target = depth - beyond;
        Optional<Fault> hindrance =
                outside(target, canal).or(() -> Entry.fault(instrument.rod(), canal.now(), canal.support(), target));
        if (hindrance.isPresent()) {
            faults.add(PreparedSequence.in(index, hindrance.get()));
            return;
        }
        double bind = Entry.bindDepthMm(instrument.rod(), canal.now(), canal.support(), target);
        Movement movement = Movement.of(
                step.motion(),
                step.speedRpm().orElse(USUAL_RPM),
                plan.secondsAtDepth(),
                ReciprocationAngles.of(working, prepared.arranged().motor()));
        StepOutcome outcome = StepWork.run(
                canal,
                instrument,
                plan.depthsMm(bind, target, step.strokes()),
                movement,
                constants,
                mesh.spacingMm(),
                progress);
        steps.put(index, outcome);
        beware(index, outcome);
    }

    private static Optional<Fault> outside(double target, CanalInWork canal) {
        if (target > 0 && target <= canal.geometry().lengthMm() + 1e-9) {
            return Optional.empty();
        }
        return Optional.of(Fault.impossible(
                "depthMm",
                "the tip stands " + Shown.mm(target) + " below the orifice, outside the canal",
                "expected 0 to " + Shown.mm(canal.geometry().lengthMm())));
    }

    private void beware(int index, StepOutcome outcome) {
        if (!outcome.settled()) {
            faults.add(PreparedSequence.in(
                    index,
                    Fault.unusual(
                            "instrument",
                            "the placement did not settle within its bounds",
                            "take the numbers of this step for rough")));
        }
    }
}
