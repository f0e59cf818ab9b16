package org.taperwright.sequencer.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.store.Arrangement;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.finish.Finish;
import org.taperwright.shaping.finish.NeedleWatch;
import org.taperwright.shaping.passage.remark.ShapedRules;
import org.taperwright.shaping.passage.stroke.CanalInWork;
import org.taperwright.shaping.passage.stroke.Mesh;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.passage.stroke.SequenceShaping;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.ShapingConstants;
import org.taperwright.shaping.passage.stroke.StrokePlan;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.workbench.api.Work;

/**
 * Shapes the canal of an arrangement stroke by stroke, at the middle of every constant, and looks what it then lets in.
 *
 * @param arrangement the input, kept with the result
 */
public record ShapingWork(Arrangement arrangement) implements Work<Shaped> {
    @Override
    public Shaped run(Progress progress) {
        Optional<ArrangedSequence> arranged = arrangement
                .arranged()
                .filter(found -> CanalGeometry.possible(found.canal()))
                .filter(found -> !found.instruments().isEmpty());
        List<Integer> places = arrangement.complete();
        List<Fault> remarks = new ArrayList<>();
        List<Fault> onIndices = new ArrayList<>();
        Optional<Shaped.Run> run = arranged.map(found -> run(found, progress));
        run.ifPresent(ran -> {
            ran.sequence().faults().forEach(fault -> remarks.add(StepPlaces.inSequence(fault, places)));
            ShapedRules.check(ran.prepared().arranged(), ran.sequence())
                    .forEach(fault -> onIndices.add(StepPlaces.inSequence(fault, places)));
        });
        return new Shaped(arrangement, places, run, remarks, onIndices);
    }

    private static Shaped.Run run(ArrangedSequence arranged, Progress progress) {
        PreparedSequence prepared = PreparedSequence.of(arranged);
        CanalInWork canal = CanalInWork.of(arranged.canal(), Mesh.FINE.spacingMm(), Mesh.FINE.directions());
        NeedleWatch needles = new NeedleWatch(arranged);
        ShapedSequence shaped = SequenceShaping.run(
                prepared, canal, ShapingConstants.USUAL, StrokePlan.USUAL, Mesh.FINE, needles, progress);
        progress.at(1, "what the canal lets in");
        progress.check();
        Finish finish = Finish.of(canal, endMm(canal, arranged, shaped), progress);
        StepNumbers numbers = StepNumbers.of(shaped, prepared.instruments().size(), progress);
        return new Shaped.Run(prepared, shaped, numbers, needles.reaches(), finish);
    }

    /** Depth of the last step that was made, at most the working length; where none was, that at which instrumentation is to end. */
    private static double endMm(CanalInWork canal, ArrangedSequence arranged, ShapedSequence shaped) {
        if (shaped.byPlace().isEmpty()) {
            return canal.geometry().endDepthMm();
        }
        double last = arranged.depthMm(shaped.byPlace().lastKey());
        return canal.geometry().depthOfMm(Math.min(arranged.canal().workingLengthMm(), last));
    }
}
