package org.taperwright.mechanics.design;

/** The motion an instrument is meant for. */
public enum Motion {
    FILING("filing"),
    REAMING("reaming"),
    ROTATION("rotation"),
    RECIPROCATION("reciprocation");

    private final String word;

    Motion(String word) {
        this.word = word;
    }

    /** The word shown to people. */
    public String word() {
        return word;
    }
}
