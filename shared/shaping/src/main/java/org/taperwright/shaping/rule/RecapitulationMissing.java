package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.SequenceRule;

/**
 * Two widening instruments with nothing between them that sees to the way to the working length: no recapitulation, no
 * patency, and no small file taken to the end.
 */
public final class RecapitulationMissing implements SequenceRule {
    @Override
    public String id() {
        return "recapitulation-missing";
    }

    @Override
    public String explanation() {
        return "Between two widening instruments a small one is brought back to the working length.";
    }

    @Override
    public String source() {
        return StepRule.COMMON_PRACTICE;
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged) {
        List<Integer> atEnd =
                AtTheEnd.workings(arranged).stream().map(Working::place).toList();
        List<String> missing = new ArrayList<>();
        int before = -1;
        int first = -1;
        for (Working working : arranged.workings()) {
            boolean small = AtTheEnd.scouts(working.instrument())
                    || !(arranged.step(working.place()) instanceof InstrumentStep);
            if (!small && before >= 0) {
                missing.add((before + 1) + " and " + (working.place() + 1));
                first = first < 0 ? working.place() : first;
            }
            if (!small) {
                before = working.place();
            } else if (atEnd.contains(working.place())) {
                before = -1;
            }
        }
        return first < 0
                ? List.of()
                : List.of(Fault.unusual(
                        "steps[" + first + "]",
                        "nothing is brought back to the working length between steps " + String.join(", ", missing),
                        "put a recapitulation with a small file there"));
    }
}
