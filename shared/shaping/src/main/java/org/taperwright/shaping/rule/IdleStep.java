package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.GeometricPassages;
import org.taperwright.shaping.passage.StepGeometry;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.SequenceRule;

/** A step that is nowhere wider than what was there before it, unless it is small enough to scout or recapitulate. */
public final class IdleStep implements SequenceRule {
    @Override
    public String id() {
        return "idle-step";
    }

    @Override
    public String explanation() {
        return "A step is somewhere wider than the canal and the steps before it; only small files may do no work.";
    }

    @Override
    public String source() {
        return "geometry: instruments centred in the canal";
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged) {
        List<Fault> faults = new ArrayList<>();
        List<StepGeometry> steps = GeometricPassages.steps(arranged);
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).engaged().isEmpty()
                    && !AtTheEnd.scouts(arranged.instruments().get(i))) {
                faults.add(Fault.unusual(
                        "steps[" + i + "]",
                        "it is nowhere wider than what was there before it",
                        "go deeper, take a wider instrument, or leave the step out"));
            }
        }
        return faults;
    }
}
