package org.taperwright.shaping.passage.remark;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence;

/** A step in which a stroke's loose chips fill the flutes. */
public final class ChipsWithoutRoom implements ShapedRule {
    @Override
    public String id() {
        return "chips-without-room";
    }

    @Override
    public String explanation() {
        return "The loose chips of a stroke have room in the flutes.";
    }

    @Override
    public String source() {
        return "geometry, with the loosening of chips assumed, no source";
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged, ShapedSequence shaped) {
        List<Fault> faults = new ArrayList<>();
        shaped.byPlace().forEach((place, step) -> {
            if (step.roomFilled() > 1) {
                faults.add(Fault.unusual(
                        "steps[" + place + "].strokes",
                        "a stroke's chips would fill " + Shown.percent(step.roomFilled())
                                + " of the flutes' room (an estimate)",
                        "take more and shorter strokes, and clean the flutes between them"));
            }
        });
        return faults;
    }
}
