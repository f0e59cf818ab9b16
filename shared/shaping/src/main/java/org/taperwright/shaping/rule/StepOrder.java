package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.InstrumentStep;
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
        Optional<Working> largest = Optional.empty();
        for (Working working : AtTheEnd.workings(arranged)) {
            Instrument instrument = working.instrument();
            Optional<Working> wider =
                    largest.filter(before -> before.instrument().size() > instrument.size());
            if (wider.isEmpty()) {
                largest = Optional.of(working);
            } else if (arranged.step(working.place()) instanceof InstrumentStep && !AtTheEnd.scouts(instrument)) {
                faults.add(Fault.unusual(
                        working.where(),
                        Designation.of(instrument).text() + " comes to the working length after "
                                + Designation.of(wider.get().instrument()).text(),
                        "put it before step " + (wider.get().place() + 1)
                                + ", leave it out, or call it a recapitulation"));
            }
        }
        return faults;
    }
}
