package org.taperwright.library.exchange.transfer;

/** What becomes of a thing on offer that the library has otherwise. */
public enum Resolution {
    /** The library's stays; the one on offer is passed over. */
    OURS("ours"),
    /** The one on offer takes its place; the library's stays in its past. */
    THEIRS("theirs"),
    /** The one on offer comes in under a new identifier, and what comes with it refers to it by that. */
    BOTH("both");

    private final String word;

    Resolution(String word) {
        this.word = word;
    }

    /** The word for people. */
    public String word() {
        return word;
    }
}
