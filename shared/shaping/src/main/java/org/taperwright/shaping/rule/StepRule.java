package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.SequenceRule;

/** A rule that looks at each step in which an instrument works by itself. */
interface StepRule extends SequenceRule {
    String COMMON_PRACTICE = "common practice, no source";

    /** Adds what deserves a look in one step; place is "steps[i]". */
    void check(ArrangedSequence arranged, InstrumentStep step, Instrument instrument, String place, List<Fault> faults);

    @Override
    default List<Fault> check(ArrangedSequence arranged) {
        List<Fault> faults = new ArrayList<>();
        arranged.workings()
                .forEach(working -> check(arranged, working.step(), working.instrument(), working.where(), faults));
        return faults;
    }
}
