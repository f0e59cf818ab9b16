package org.taperwright.kit.ui;

/** How a piece stands. */
enum PieceState {
    IN_USE("in use"),
    CONSIDER("consider discarding"),
    DUE("discard"),
    DISCARDED("discarded");

    private final String word;

    PieceState(String word) {
        this.word = word;
    }

    /** The word shown to people. */
    String word() {
        return word;
    }
}
