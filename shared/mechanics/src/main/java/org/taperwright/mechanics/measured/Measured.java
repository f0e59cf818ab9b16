package org.taperwright.mechanics.measured;

/** What was measured on a bench, under a name for people. */
public sealed interface Measured permits MeasuredCurve, MeasuredLives {
    /** Name for people. */
    String label();
}
