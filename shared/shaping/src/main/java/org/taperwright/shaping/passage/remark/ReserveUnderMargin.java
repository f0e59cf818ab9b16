package org.taperwright.shaping.passage.remark;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence;

/** A step in which the instrument comes near to the torque that would break it. */
public final class ReserveUnderMargin implements ShapedRule {
    /** Below this the step is remarked. */
    public static final double MARGIN = 1.5;

    @Override
    public String id() {
        return "reserve-under-margin";
    }

    @Override
    public String explanation() {
        return "An instrument bears at least " + Shown.number(MARGIN) + " times the torque that acts on it.";
    }

    @Override
    public String source() {
        return "assumed, no source; the reserve is an index, a factor of three either way";
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged, ShapedSequence shaped) {
        List<Fault> faults = new ArrayList<>();
        shaped.byPlace().forEach((place, step) -> {
            if (step.reserve() < MARGIN) {
                faults.add(Fault.unusual(
                        "steps[" + place + "]",
                        "the torsional reserve of " + under(step.reserve()) + " (an index) is under "
                                + Shown.number(MARGIN),
                        "widen more before it, take more strokes, or a narrower or stronger instrument"));
            }
        });
        return faults;
    }

    /** A reserve that is rounded to no more than it is: none reads as the margin itself. */
    private static String under(double reserve) {
        return Shown.number(Math.min(reserve, MARGIN - 0.01), 1, 2);
    }
}
