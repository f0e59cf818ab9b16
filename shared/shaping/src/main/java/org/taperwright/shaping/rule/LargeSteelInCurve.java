package org.taperwright.shaping.rule;

import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;

/** A wide instrument of an alloy that is not superelastic, taken round a bend: it straightens rather than follows. */
public final class LargeSteelInCurve implements StepRule {
    private static final int LARGEST = 25;
    private static final double BENT_DEG = 20;

    @Override
    public String id() {
        return "large-steel-in-curve";
    }

    @Override
    public String explanation() {
        return "An instrument of steel above size " + LARGEST + " is not taken round a bend of more than "
                + Shown.degrees(BENT_DEG) + ".";
    }

    @Override
    public String source() {
        return COMMON_PRACTICE;
    }

    @Override
    public void check(
            ArrangedSequence arranged, InstrumentStep step, Instrument instrument, String place, List<Fault> faults) {
        boolean steel = arranged.alloys()
                .find(instrument.design().alloy())
                .filter(alloy -> !alloy.superelastic())
                .isPresent();
        double turned = BendPassed.deg(arranged.canal(), step.depthMm());
        if (steel && instrument.size() > LARGEST && turned > BENT_DEG) {
            faults.add(Fault.unusual(
                    place + ".instrument",
                    Designation.of(instrument).text() + " of steel is taken round a bend of " + Shown.degrees(turned),
                    "take a nickel-titanium instrument, size " + LARGEST + " or smaller, or stop before the bend"));
        }
    }
}
