package org.taperwright.shaping.kit;

/** What can be seen on a used instrument, in the trade's words. */
public enum Damage {
    UNWOUND("unwound"),
    OVERWOUND("overwound"),
    STRETCHED("stretched flutes"),
    BENT("bent"),
    NICKED("nicked edge"),
    BLUNT("blunt"),
    CORRODED("corroded"),
    CRACKED("cracked"),
    BROKEN_FLUTE("broken flute"),
    BROKEN("broken off");

    private final String word;

    Damage(String word) {
        this.word = word;
    }

    /** The word shown to people. */
    public String word() {
        return word;
    }
}
