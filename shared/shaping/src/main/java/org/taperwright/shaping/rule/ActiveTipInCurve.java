package org.taperwright.shaping.rule;

import java.util.List;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;

/** An instrument that widens and whose tip cuts, taken round a bend: it may leave the canal's way. */
public final class ActiveTipInCurve implements StepRule {
    private static final double BENT_DEG = 10;

    @Override
    public String id() {
        return "active-tip-in-curve";
    }

    @Override
    public String explanation() {
        return "An instrument above size 15 whose tip cuts is not taken round a bend of more than "
                + Shown.degrees(BENT_DEG) + ".";
    }

    @Override
    public String source() {
        return COMMON_PRACTICE;
    }

    @Override
    public void check(
            ArrangedSequence arranged, InstrumentStep step, Instrument instrument, String place, List<Fault> faults) {
        double turned = BendPassed.deg(arranged.canal(), step.depthMm());
        boolean cuts = instrument.design().tip().kind() == TipKind.ACTIVE && !AtTheEnd.scouts(instrument);
        if (cuts && turned > BENT_DEG) {
            faults.add(Fault.unusual(
                    place + ".instrument",
                    "its tip cuts and is taken round a bend of " + Shown.degrees(turned),
                    "take an instrument with a passive tip, or stop before the bend"));
        }
    }
}
