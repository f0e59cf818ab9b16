package org.taperwright.shaping.rule;

import java.util.List;
import org.taperwright.mechanics.design.DesignChecks;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;

/** An instrument whose own design cannot exist. */
public final class SoundDesign implements StepRule {
    @Override
    public String id() {
        return "sound-design";
    }

    @Override
    public String explanation() {
        return "Every instrument's design can exist.";
    }

    @Override
    public String source() {
        return "the checks of a design, each with its own source";
    }

    @Override
    public void check(
            ArrangedSequence arranged, InstrumentStep step, Instrument instrument, String place, List<Fault> faults) {
        DesignChecks.check(instrument.design(), arranged.alloys()).stream()
                .filter(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                .map(fault -> Fault.impossible(
                        place + ".instrument",
                        "the design of " + instrument.name() + " is impossible at " + fault.where() + ": "
                                + fault.what(),
                        fault.expected()))
                .forEach(faults::add);
    }
}
