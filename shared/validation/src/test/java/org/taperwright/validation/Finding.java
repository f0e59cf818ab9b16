package org.taperwright.validation;

/**
 * One value held against an outside source.
 *
 * @param source where the expected value comes from
 * @param quantity what it is, with its unit
 * @param expected the source's value
 * @param ours the engine's value
 * @param tolerance greatest relative difference allowed
 * @param reason why the tolerance is what it is
 */
record Finding(String source, String quantity, double expected, double ours, double tolerance, String reason) {
    /** Relative difference; absolute where the expected value is zero. */
    double error() {
        return expected == 0 ? Math.abs(ours) : Math.abs(ours - expected) / Math.abs(expected);
    }
}
