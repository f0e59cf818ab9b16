package org.taperwright.shaping.rule;

import java.util.List;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.SequenceRule;

/** A sequence that widens the end of the canal and never passes a small file beyond it. */
public final class PatencyMissing implements SequenceRule {
    @Override
    public String id() {
        return "patency-missing";
    }

    @Override
    public String explanation() {
        return "Where the end of the canal is widened, a small file is passed a little beyond it to keep it open.";
    }

    @Override
    public String source() {
        return StepRule.COMMON_PRACTICE + "; not taught everywhere";
    }

    /** How wide the canal is where instrumentation ends, mm; 0 where it cannot be said. */
    private static double endMm(Canal canal) {
        return CanalGeometry.possible(canal) ? new CanalGeometry(canal).narrowMm(canal.endDepthMm()) : 0;
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged) {
        List<Working> widening = AtTheEnd.workings(arranged).stream()
                .filter(working -> arranged.step(working.place()) instanceof InstrumentStep)
                .filter(working -> !AtTheEnd.scouts(working.instrument()))
                .filter(working -> working.instrument().design().tipDiameterMm() > endMm(arranged.canal()))
                .toList();
        if (widening.isEmpty() || arranged.sequence().steps().stream().anyMatch(Patency.class::isInstance)) {
            return List.of();
        }
        return List.of(Fault.unusual(
                widening.get(0).where(),
                "the end of the canal is widened, and no step sees to its patency",
                "put a patency step with a small file before and after it, if you are taught to"));
    }
}
