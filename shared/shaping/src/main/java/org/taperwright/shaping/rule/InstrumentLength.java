package org.taperwright.shaping.rule;

import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;

/** An instrument whose length from tip to handle does not reach the step's depth, or leaves its stop no room. */
public final class InstrumentLength implements StepRule {
    /** A stop is about so thick, mm: common practice, no source. */
    private static final double STOP_MM = 1;

    @Override
    public String id() {
        return "instrument-length";
    }

    @Override
    public String explanation() {
        return "An instrument reaches no deeper than its length from tip to handle, and its stop has room at the depth.";
    }

    @Override
    public String source() {
        return "geometry: both lengths are measured from the coronal reference point; the stop's thickness: common practice, no source";
    }

    @Override
    public void check(
            ArrangedSequence arranged, InstrumentStep step, Instrument instrument, String place, List<Fault> faults) {
        double length = instrument.design().lengthMm();
        if (step.depthMm() > length) {
            faults.add(Fault.impossible(
                    place + ".depthMm",
                    "the instrument is " + Shown.mm(length) + " long and cannot reach " + Shown.mm(step.depthMm()),
                    "take a longer instrument or a depth of at most " + Shown.mm(length)));
        } else if (step.depthMm() > length - STOP_MM) {
            faults.add(Fault.unusual(
                    place + ".depthMm",
                    "the stop is to stand " + Shown.mm(step.depthMm()) + " from the tip, where the instrument of "
                            + Shown.mm(length) + " has less than " + Shown.mm(STOP_MM)
                            + " left for it below the handle",
                    "take a longer instrument, or a reference point that is nearer"));
        }
    }
}
