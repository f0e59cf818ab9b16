package org.taperwright.mechanics.section;

/** Angles brought into a standard range, rad. */
final class Angles {
    static final double FULL = 2 * Math.PI;

    private Angles() {}

    /** The same direction in [0, 2 pi). */
    static double positive(double angle) {
        double rest = angle % FULL;
        double result = rest < 0 ? rest + FULL : rest;
        return result >= FULL ? 0 : result;
    }

    /** The same turn in (-pi, pi]. */
    static double signed(double angle) {
        double result = positive(angle);
        return result > Math.PI ? result - FULL : result;
    }
}
