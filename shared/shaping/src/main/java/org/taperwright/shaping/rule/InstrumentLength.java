package org.taperwright.shaping.rule;

import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Step;

/** An instrument whose length from tip to handle does not reach the step's depth. */
public final class InstrumentLength implements StepRule {
    @Override
    public String id() {
        return "instrument-length";
    }

    @Override
    public String explanation() {
        return "An instrument reaches no deeper than its length from tip to handle.";
    }

    @Override
    public String source() {
        return "geometry: both lengths are measured from the coronal reference point";
    }

    @Override
    public void check(ArrangedSequence arranged, Step step, Instrument instrument, String place, List<Fault> faults) {
        double length = instrument.design().lengthMm();
        if (step.depthMm() > length) {
            faults.add(Fault.impossible(
                    place + ".depthMm",
                    "the instrument is " + Shown.mm(length) + " long and cannot reach " + Shown.mm(step.depthMm()),
                    "take a longer instrument or a depth of at most " + Shown.mm(length)));
        }
    }
}
