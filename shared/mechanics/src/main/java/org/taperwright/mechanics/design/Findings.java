package org.taperwright.mechanics.design;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;

/** Faults as they are gathered. */
final class Findings {
    private final List<Fault> faults = new ArrayList<>();

    void impossible(String where, String what, String expected) {
        faults.add(Fault.impossible(where, what, expected));
    }

    void unusual(String where, String what, String expected) {
        faults.add(Fault.unusual(where, what, expected));
    }

    void add(Fault fault) {
        faults.add(fault);
    }

    /** Whether a value is within limits; notes it when it is not, or is no number. */
    boolean within(String where, String quantity, double value, String unit, double least, double most) {
        if (value >= least && value <= most) {
            return true;
        }
        impossible(
                where,
                quantity + " is " + Shown.number(value, 0, 4) + unit,
                "from " + Shown.number(least, 0, 4) + " to " + Shown.number(most, 0, 4) + unit);
        return false;
    }

    /** Whether a list is longer than is worked on; notes it when it is. */
    boolean tooMany(String where, String things, int count, int most) {
        if (count > most) {
            impossible(where, "there are " + count + " " + things, "at most " + most);
        }
        return count > most;
    }

    boolean noneImpossible() {
        return faults.stream().noneMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE);
    }

    List<Fault> all() {
        return List.copyOf(faults);
    }
}
