package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.SequenceRule;
import org.taperwright.shaping.sequence.Step;

/** A rule that looks at each step by itself. */
interface StepRule extends SequenceRule {
    String COMMON_PRACTICE = "common practice, no source";

    /** Adds what deserves a look in one step; place is "steps[i]". */
    void check(ArrangedSequence arranged, Step step, Instrument instrument, String place, List<Fault> faults);

    @Override
    default List<Fault> check(ArrangedSequence arranged) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < arranged.instruments().size(); i++) {
            Step step = arranged.sequence().steps().get(i);
            check(arranged, step, arranged.instruments().get(i), "steps[" + i + "]", faults);
        }
        return faults;
    }
}
