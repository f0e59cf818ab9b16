package org.taperwright.shaping.kit;

/** Counts in words. */
final class Counted {
    private Counted() {}

    /** So many times. */
    static String times(int count) {
        return count == 1 ? "once" : count + " times";
    }

    /** So many of something that takes an s. */
    static String of(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
