package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.SequenceRule;

/** A patency step with a file that widens, or that goes far beyond the end. */
public final class PatencySize implements SequenceRule {
    private static final double FURTHEST_MM = 1;

    @Override
    public String id() {
        return "patency-size";
    }

    @Override
    public String explanation() {
        return "Patency is kept by a small file, and no further than " + Shown.mm(FURTHEST_MM)
                + " beyond the working length.";
    }

    @Override
    public String source() {
        return StepRule.COMMON_PRACTICE;
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged) {
        List<Fault> faults = new ArrayList<>();
        for (Working working : arranged.workings()) {
            if (arranged.step(working.place()) instanceof Patency patency) {
                if (!AtTheEnd.scouts(working.instrument())) {
                    faults.add(Fault.unusual(
                            working.where() + ".instrument",
                            "size " + working.instrument().size()
                                    + " is passed beyond the working length and widens it",
                            "take a file of size 15 or smaller"));
                }
                if (patency.beyondMm() > FURTHEST_MM) {
                    faults.add(Fault.unusual(
                            working.where() + ".beyondMm",
                            Shown.mm(patency.beyondMm()) + " beyond the working length",
                            "go no more than " + Shown.mm(FURTHEST_MM) + " beyond it"));
                }
            }
        }
        return faults;
    }
}
