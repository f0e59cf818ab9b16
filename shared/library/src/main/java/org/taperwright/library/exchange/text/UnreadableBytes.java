package org.taperwright.library.exchange.text;

import java.nio.charset.CharacterCodingException;

/** Bytes that the encoding does not know, and where they begin. */
public final class UnreadableBytes extends CharacterCodingException {
    private static final long serialVersionUID = 1L;

    private final long position;

    /** Bytes from a position on, from 1. */
    public UnreadableBytes(long position) {
        this.position = position;
    }

    /** Number of the first byte that is not understood, from 1. */
    public long position() {
        return position;
    }

    @Override
    public String getMessage() {
        return "byte " + position + " is not understood";
    }
}
