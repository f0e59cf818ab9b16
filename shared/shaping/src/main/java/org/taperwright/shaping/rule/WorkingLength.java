package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.SequenceRule;

/** A step that goes deeper than the working length, or not into the canal at all. */
public final class WorkingLength implements SequenceRule {
    @Override
    public String id() {
        return "working-length";
    }

    @Override
    public String explanation() {
        return "A step ends within the canal and, but for patency, no deeper than the working length.";
    }

    @Override
    public String source() {
        return StepRule.COMMON_PRACTICE;
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < arranged.sequence().steps().size(); i++) {
            if (!(arranged.step(i) instanceof Patency)) {
                check(arranged.depthMm(i), arranged.canal(), "steps[" + i + "].depthMm", faults);
            }
        }
        return faults;
    }

    private static void check(double depthMm, Canal canal, String where, List<Fault> faults) {
        double workingLength = canal.workingLengthMm();
        double orifice = canal.coronalReferenceMm();
        if (depthMm > workingLength) {
            faults.add(Fault.unusual(
                    where,
                    Shown.mm(depthMm) + " is " + Shown.mm(depthMm - workingLength) + " beyond the working length of "
                            + Shown.mm(workingLength),
                    "keep to the working length; a small file that is meant to pass it is a patency step"));
        } else if (depthMm <= orifice) {
            faults.add(Fault.unusual(
                    where,
                    "the tip stays outside the canal, whose orifice is " + Shown.mm(orifice)
                            + " from the reference point",
                    "go deeper, or leave the step out"));
        }
    }
}
