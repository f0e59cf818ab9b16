package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.SequenceRule;

/** Two instruments that work one after the other with no irrigation between them, or the last with none after it. */
public final class IrrigationMissing implements SequenceRule {
    @Override
    public String id() {
        return "irrigation-missing";
    }

    @Override
    public String explanation() {
        return "The canal is irrigated between two instruments, and after the last.";
    }

    @Override
    public String source() {
        return StepRule.COMMON_PRACTICE;
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged) {
        List<Working> working = arranged.workings().stream()
                .filter(each -> arranged.step(each.place()) instanceof InstrumentStep)
                .toList();
        List<String> dry = new ArrayList<>();
        int first = -1;
        for (int i = 0; i < working.size(); i++) {
            int from = working.get(i).place();
            boolean last = i == working.size() - 1;
            int to = last ? arranged.instruments().size() : working.get(i + 1).place();
            if (arranged.sequence().steps().subList(from, to).stream().noneMatch(Irrigation.class::isInstance)) {
                dry.add(last ? "after step " + (from + 1) : "between steps " + (from + 1) + " and " + (to + 1));
                first = first < 0 ? from : first;
            }
        }
        return first < 0
                ? List.of()
                : List.of(Fault.unusual(
                        "steps[" + first + "]",
                        "the canal is not irrigated " + String.join(", ", dry),
                        "put an irrigation there"));
    }
}
