package org.taperwright.mechanics.properties.helix;

/** A section for which no helical factors were found within the bounds of work; the message says so in plain words. */
public final class NoFactors extends IllegalArgumentException {
    NoFactors(String message) {
        super(message);
    }
}
