package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.SequenceRule;

/** At the working length a smaller instrument after a larger one, unless it recapitulates. */
public final class StepOrder implements SequenceRule {
    @Override
    public String id() {
        return "step-order";
    }

    @Override
    public String explanation() {
        return "Sizes at the working length rise from step to step; only small files come back, to recapitulate.";
    }

    @Override
    public String source() {
        return StepRule.COMMON_PRACTICE;
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged) {
        List<Fault> faults = new ArrayList<>();
        int largest = -1;
        for (int i : AtTheEnd.steps(arranged)) {
            Instrument instrument = arranged.instruments().get(i);
            if (largest >= 0) {
                Instrument before = arranged.instruments().get(largest);
                if (instrument.size() < before.size() && !AtTheEnd.scouts(instrument)) {
                    faults.add(Fault.unusual(
                            "steps[" + i + "]",
                            Designation.of(instrument).text() + " comes to the working length after "
                                    + Designation.of(before).text(),
                            "put it before step " + (largest + 1) + ", or leave it out"));
                    continue;
                }
            }
            if (largest < 0
                    || instrument.size() > arranged.instruments().get(largest).size()) {
                largest = i;
            }
        }
        return faults;
    }
}
