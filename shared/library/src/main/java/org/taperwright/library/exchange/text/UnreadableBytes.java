package org.taperwright.library.exchange.csv;

import java.nio.charset.CharacterCodingException;

/** Bytes that the encoding does not know, and where they begin. */
final class UnreadableBytes extends CharacterCodingException {
    private static final long serialVersionUID = 1L;

    private final long position;

    UnreadableBytes(long position) {
        this.position = position;
    }

    /** Number of the first byte that is not understood, from 1. */
    long position() {
        return position;
    }

    @Override
    public String getMessage() {
        return "byte " + position + " is not understood";
    }
}
