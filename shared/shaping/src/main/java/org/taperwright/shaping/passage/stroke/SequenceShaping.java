package org.taperwright.shaping.passage.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.DesignChecks;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.placement.Entry;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Step;

/**
 * Runs a sequence in its canal, step by step. Ends at the first step whose instrument cannot be brought to its depth, with the
 * level and the reason; what was done before it stands.
 */
public final class SequenceShaping {
    /** Distance of nodes and stations, mm, and number of directions: those the method was tried with. */
    private static final double SPACING_MM = 0.1;

    private static final int DIRECTIONS = 72;
    /** A motor's speed where a step names none, rev/min (common practice, no source). */
    private static final double USUAL_RPM = 300;

    private final ArrangedSequence arranged;
    private final ShapingConstants constants;
    private final StrokePlan plan;
    private final List<StepOutcome> steps = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();

    private SequenceShaping(ArrangedSequence arranged, ShapingConstants constants, StrokePlan plan) {
        this.arranged = arranged;
        this.constants = constants;
        this.plan = plan;
    }

    /** A sequence with dentine and strokes as usual. */
    public static ShapedSequence of(ArrangedSequence arranged, Progress progress) {
        return of(arranged, ShapingConstants.USUAL, StrokePlan.USUAL, progress);
    }

    /** A sequence with constants and strokes as given. */
    public static ShapedSequence of(
            ArrangedSequence arranged, ShapingConstants constants, StrokePlan plan, Progress progress) {
        return new SequenceShaping(arranged, constants, plan).run(progress);
    }

    private ShapedSequence run(Progress progress) {
        for (Fault fault : CanalGeometry.check(arranged.canal())) {
            if (fault.weight() == Fault.Weight.IMPOSSIBLE) {
                faults.add(new Fault(fault.weight(), "canal." + fault.where(), fault.what(), fault.expected()));
            }
        }
        if (!faults.isEmpty()) {
            return new ShapedSequence(List.of(), Optional.empty(), faults);
        }
        CanalInWork canal = CanalInWork.of(arranged.canal(), SPACING_MM, DIRECTIONS);
        int count = arranged.instruments().size();
        for (int i = 0; i < count; i++) {
            progress.at((double) i / count, "step " + (i + 1) + " of " + count);
            if (!step(i, canal, progress)) {
                break;
            }
        }
        return new ShapedSequence(steps, Optional.of(CanalOutcome.of(canal)), faults);
    }

    private boolean step(int index, CanalInWork canal, Progress progress) {
        Step step = arranged.sequence().steps().get(index);
        Design design = arranged.instruments().get(index).design();
        Optional<Alloy> alloy = Alloys.find(design.alloy());
        double target = canal.geometry().depthOfMm(step.depthMm());
        if (impossible(index, design, alloy) || outside(index, target, canal)) {
            return false;
        }
        WorkingInstrument instrument = WorkingInstruments.of(design, alloy.orElseThrow(), step.motion());
        Optional<Fault> entry = Entry.fault(instrument.rod(), canal.now(), canal.support(), target);
        if (entry.isPresent()) {
            faults.add(in(index, entry.get()));
            return false;
        }
        double bind = Entry.bindDepthMm(instrument.rod(), canal.now(), canal.support(), target);
        Movement movement = Movement.of(step.motion(), step.speedRpm().orElse(USUAL_RPM), plan.secondsAtDepth());
        StepOutcome outcome = StepWork.run(
                canal,
                instrument,
                plan.depthsMm(bind, target, step.strokes()),
                movement,
                constants,
                DamageByLevel.none(instrument.rod().lengthMm()),
                SPACING_MM,
                progress);
        steps.add(outcome);
        beware(index, outcome);
        return true;
    }

    private boolean impossible(int index, Design design, Optional<Alloy> alloy) {
        List<Fault> found = DesignChecks.check(design).stream()
                .filter(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                .toList();
        found = found.isEmpty() ? BladeSections.faults(design) : found;
        found.forEach(fault -> faults.add(
                in(index, Fault.impossible("instrument.design." + fault.where(), fault.what(), fault.expected()))));
        if (found.isEmpty() && alloy.isEmpty()) {
            faults.add(in(
                    index,
                    Fault.impossible(
                            "instrument.design.alloy",
                            "there is no alloy \"" + design.alloy() + "\"",
                            "expected one of the alloys at hand")));
        }
        return !found.isEmpty() || alloy.isEmpty();
    }

    private boolean outside(int index, double target, CanalInWork canal) {
        boolean outside = !(target > 0 && target <= canal.geometry().lengthMm() + 1e-9);
        if (outside) {
            faults.add(in(
                    index,
                    Fault.impossible(
                            "depthMm",
                            "the tip stands " + Shown.mm(target) + " below the orifice, outside the canal",
                            "expected 0 to " + Shown.mm(canal.geometry().lengthMm()))));
        }
        return outside;
    }

    private void beware(int index, StepOutcome outcome) {
        if (!outcome.settled()) {
            faults.add(in(
                    index,
                    Fault.unusual(
                            "instrument",
                            "the placement did not settle within its bounds",
                            "take the numbers of this step for rough")));
        }
    }

    private static Fault in(int index, Fault fault) {
        return new Fault(fault.weight(), "steps[" + index + "]." + fault.where(), fault.what(), fault.expected());
    }
}
