package org.taperwright.mechanics.work;

/**
 * Something impossible or unusual in what a user entered.
 *
 * @param weight whether it stops the computation or only deserves a look
 * @param where the field in the words of the JSON form, such as {@code taper[1].taper}
 * @param what what is there, in plain words
 * @param expected what was expected instead, and why
 */
public record Fault(Weight weight, String where, String what, String expected) {
    /** How much a fault matters. */
    public enum Weight {
        /** Cannot exist or cannot be computed. */
        IMPOSSIBLE,
        /** Possible, but rarely made or used so. */
        UNUSUAL
    }

    /** A fault that stops the computation. */
    public static Fault impossible(String where, String what, String expected) {
        return new Fault(Weight.IMPOSSIBLE, where, what, expected);
    }

    /** A fault that only deserves a look. */
    public static Fault unusual(String where, String what, String expected) {
        return new Fault(Weight.UNUSUAL, where, what, expected);
    }

    /** One line for people. */
    public String sentence() {
        return where + ": " + what + "; " + expected;
    }
}
