package org.taperwright.mechanics.measured;

/** What is computed as a function of the constants that are fitted, beside what was measured, both scaled alike. */
interface FitModel {
    /** What is computed at values of the constants. */
    double[] computed(double[] values);

    /** What was measured, in the same order. */
    double[] measured();
}
