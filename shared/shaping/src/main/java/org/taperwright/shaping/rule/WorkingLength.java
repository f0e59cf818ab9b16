package org.taperwright.shaping.rule;

import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Step;

/** A step that goes deeper than the working length, or not into the canal at all. */
public final class WorkingLength implements StepRule {
    @Override
    public String id() {
        return "working-length";
    }

    @Override
    public String explanation() {
        return "A step ends within the canal and no deeper than the working length.";
    }

    @Override
    public String source() {
        return COMMON_PRACTICE;
    }

    @Override
    public void check(ArrangedSequence arranged, Step step, Instrument instrument, String place, List<Fault> faults) {
        double workingLength = arranged.canal().workingLengthMm();
        double orifice = arranged.canal().coronalReferenceMm();
        if (step.depthMm() > workingLength) {
            faults.add(Fault.unusual(
                    place + ".depthMm",
                    Shown.mm(step.depthMm()) + " is " + Shown.mm(step.depthMm() - workingLength)
                            + " beyond the working length of " + Shown.mm(workingLength),
                    "keep to the working length, unless a small patency file is meant"));
        } else if (step.depthMm() <= orifice) {
            faults.add(Fault.unusual(
                    place + ".depthMm",
                    "the tip stays outside the canal, whose orifice is " + Shown.mm(orifice)
                            + " from the reference point",
                    "go deeper, or leave the step out"));
        }
    }
}
