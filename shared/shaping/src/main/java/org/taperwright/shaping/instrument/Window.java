package org.taperwright.shaping.instrument;

import java.util.function.DoubleFunction;

/** A range a maker or motor allows, both ends included. */
public record Window(double least, double most) {
    /** As written: {@code 250 rpm to 350 rpm}, or one value where both ends are the same. */
    public String text(DoubleFunction<String> written) {
        return least == most ? written.apply(least) : written.apply(least) + " to " + written.apply(most);
    }

    /** Whether the value lies in the range. */
    public boolean holds(double value) {
        return value >= least && value <= most;
    }
}
