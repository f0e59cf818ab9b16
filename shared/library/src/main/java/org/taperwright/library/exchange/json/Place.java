package org.taperwright.library.exchange.json;

/** A place in a text: line and column, both from 1; columns count characters. */
public record Place(int line, int column) {
    /** Where a text begins. */
    public static final Place START = new Place(1, 1);
}
