package org.taperwright.mechanics.bench;

/** Equations of a bench test that no solution was found for; the message says which and where. */
public final class Unsolved extends ArithmeticException {
    Unsolved(String message) {
        super(message);
    }
}
