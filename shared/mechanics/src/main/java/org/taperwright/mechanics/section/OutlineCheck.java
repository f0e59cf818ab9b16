package org.taperwright.mechanics.section;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;

/**
 * The last look at an outline: closed, simple, anticlockwise, around the axis with a core that could be made, and on the
 * circle of diameter 1.
 */
final class OutlineCheck {
    /** Least core diameter, in diameters: thinner could not be made (common practice, no source). */
    static final double LEAST_CORE = 0.02;

    private OutlineCheck() {}

    /**
     * The outline, or why it is none.
     *
     * @param where the field that faults name
     */
    static OutlineResult checked(Outline outline, String where) {
        Optional<Simplicity.Crossing> crossing = Simplicity.crossing(outline.segments());
        if (crossing.isPresent()) {
            Point at = crossing.orElseThrow().at();
            return refused(
                    where,
                    "the outline runs into itself near x = " + Numbers.text(at.x()) + ", y = " + Numbers.text(at.y())
                            + " (in diameters)",
                    "an outline that does not cross or touch itself");
        }
        if (Outlines.area(outline.segments()) <= 0 || !Outlines.contains(outline, Point.AXIS)) {
            return refused(
                    where, "the axis is outside the outline", "an outline around the instrument's axis at (0, 0)");
        }
        double core = 2 * Outlines.coreRadius(outline);
        if (core < LEAST_CORE) {
            return refused(
                    where,
                    "the core is only " + Numbers.text(core) + " of the diameter",
                    "a core of at least " + Numbers.text(LEAST_CORE) + " of the diameter");
        }
        return new OutlineResult.Drawn(outline, List.of());
    }

    private static OutlineResult refused(String where, String what, String expected) {
        return new OutlineResult.Refused(List.of(Fault.impossible(where, what, expected)));
    }
}
