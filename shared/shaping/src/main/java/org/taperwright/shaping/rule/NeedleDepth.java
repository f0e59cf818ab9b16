package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.SequenceRule;

/** A needle that is to irrigate too near to the end, from where the liquid may be pressed out. */
public final class NeedleDepth implements SequenceRule {
    private static final double SHORT_MM = 1;

    @Override
    public String id() {
        return "needle-depth";
    }

    @Override
    public String explanation() {
        return "A needle stays at least " + Shown.mm(SHORT_MM) + " short of the working length.";
    }

    @Override
    public String source() {
        return StepRule.COMMON_PRACTICE;
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged) {
        List<Fault> faults = new ArrayList<>();
        double deepest = arranged.canal().workingLengthMm() - SHORT_MM;
        for (int i = 0; i < arranged.sequence().steps().size(); i++) {
            if (arranged.step(i) instanceof Irrigation irrigation && irrigation.depthMm() > deepest + 1e-9) {
                faults.add(Fault.unusual(
                        "steps[" + i + "].depthMm",
                        "the needle's tip is less than " + Shown.mm(SHORT_MM)
                                + " short of the working length; liquid may be pressed beyond the end",
                        "go no deeper than " + Shown.mm(deepest) + ", and never let the needle bind"));
            }
        }
        return faults;
    }
}
