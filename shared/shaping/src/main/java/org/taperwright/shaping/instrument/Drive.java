package org.taperwright.shaping.instrument;

/** How an instrument is held. */
public enum Drive {
    HAND("hand"),
    POWERED("powered");

    private final String word;

    Drive(String word) {
        this.word = word;
    }

    /** The word shown to people. */
    public String word() {
        return word;
    }
}
