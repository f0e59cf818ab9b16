package org.taperwright.mechanics.quantity;

/** How far a value may be trusted; shown wherever the value is shown. */
public enum Standing {
    /** Follows from geometry and stated elastic constants. */
    COMPUTED("computed", "follows from the geometry and the stated elastic constants"),
    /** Needs uncertain constants; carries a band. */
    ESTIMATE("estimate", "needs uncertain constants; the band holds 5 to 95 %"),
    /** Only order and direction mean anything. */
    INDEX("index", "only the order means something");

    private final String word;
    private final String meaning;

    Standing(String word, String meaning) {
        this.word = word;
        this.meaning = meaning;
    }

    /** The word shown beside a value. */
    public String word() {
        return word;
    }

    /** One clause that explains the word. */
    public String meaning() {
        return meaning;
    }
}
