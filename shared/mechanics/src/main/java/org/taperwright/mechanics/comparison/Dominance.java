package org.taperwright.mechanics.comparison;

/** How sure it is that no other design dominates one, by the share of samples in which none does. */
public enum Dominance {
    /** In 95 of 100 samples or more. */
    CERTAINLY_UNDOMINATED("certainly undominated"),
    /** In some samples, but not in 95 of 100. */
    POSSIBLY_UNDOMINATED("possibly undominated"),
    /** In 5 of 100 samples or fewer. */
    DOMINATED("dominated");

    private final String words;

    Dominance(String words) {
        this.words = words;
    }

    /** The words shown to people. */
    public String words() {
        return words;
    }
}
