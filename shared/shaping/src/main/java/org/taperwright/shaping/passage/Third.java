package org.taperwright.shaping.passage;

/** Thirds of the canal's shaped length. */
public enum Third {
    CORONAL("coronal"),
    MIDDLE("middle"),
    APICAL("apical");

    private final String word;

    Third(String word) {
        this.word = word;
    }

    /** The word shown to people. */
    public String word() {
        return word;
    }
}
