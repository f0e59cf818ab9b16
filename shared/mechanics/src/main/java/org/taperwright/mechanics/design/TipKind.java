package org.taperwright.mechanics.design;

/** Whether the tip itself cuts. */
public enum TipKind {
    ACTIVE("active"),
    SEMI_ACTIVE("semi-active"),
    PASSIVE("passive");

    private final String word;

    TipKind(String word) {
        this.word = word;
    }

    /** The word shown to people. */
    public String word() {
        return word;
    }
}
