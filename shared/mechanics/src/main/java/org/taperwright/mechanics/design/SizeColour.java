package org.taperwright.mechanics.design;

/**
 * The colours that mark sizes: three for the smallest, then six that repeat. Identity only; how a colour looks is the
 * screen's matter, and the size's number always stands beside it.
 *
 * <p>Source: ISO 3630-1:1992 (from memory, high confidence).
 */
public enum SizeColour {
    PINK("pink"),
    GREY("grey"),
    PURPLE("purple"),
    WHITE("white"),
    YELLOW("yellow"),
    RED("red"),
    BLUE("blue"),
    GREEN("green"),
    BLACK("black");

    private final String word;

    SizeColour(String word) {
        this.word = word;
    }

    /** The word shown to people. */
    public String word() {
        return word;
    }
}
