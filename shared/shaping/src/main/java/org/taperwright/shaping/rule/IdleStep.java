package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.GeometricPassages;
import org.taperwright.shaping.passage.StepGeometry;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;
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
        List<Optional<StepGeometry>> steps = GeometricPassages.steps(arranged);
        for (int i = 0; i < steps.size(); i++) {
            boolean idle = steps.get(i)
                    .filter(geometry -> geometry.engaged().isEmpty())
                    .isPresent();
            if (idle
                    && arranged.step(i) instanceof InstrumentStep
                    && !AtTheEnd.scouts(arranged.instruments().get(i).orElseThrow())) {
                faults.add(Fault.unusual(
                        "steps[" + i + "]",
                        "it is nowhere wider than what was there before it",
                        "go deeper, take a wider instrument, or leave the step out"));
            }
        }
        return faults;
    }
}
