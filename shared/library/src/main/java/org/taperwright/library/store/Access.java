package org.taperwright.library.store;

/** What a user may do with a library. */
public enum Access {
    /** Look at everything in it. */
    READER("reader"),
    /** Look and edit. */
    EDITOR("editor");

    private final String word;

    Access(String word) {
        this.word = word;
    }

    /** The word for people. */
    public String word() {
        return word;
    }
}
