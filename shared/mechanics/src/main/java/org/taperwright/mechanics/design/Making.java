package org.taperwright.mechanics.design;

/** How the flutes are made. */
public enum Making {
    GROUND("ground"),
    TWISTED("twisted");

    private final String word;

    Making(String word) {
        this.word = word;
    }

    /** The word shown to people. */
    public String word() {
        return word;
    }
}
