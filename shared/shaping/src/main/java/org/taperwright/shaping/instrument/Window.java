package org.taperwright.shaping.instrument;

/** A range a maker or motor allows, both ends included. */
public record Window(double least, double most) {
    /** Whether the value lies in the range. */
    public boolean holds(double value) {
        return value >= least && value <= most;
    }
}
