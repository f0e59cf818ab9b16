package org.taperwright.mechanics.section;

/** The turning sense in which the edges lead, seen from the handle. */
public enum Hand {
    CLOCKWISE("clockwise"),
    ANTICLOCKWISE("anticlockwise");

    private final String word;

    Hand(String word) {
        this.word = word;
    }

    /** The word shown to people. */
    public String word() {
        return word;
    }
}
