package org.taperwright.mechanics.quantity;

import java.util.Optional;

/** A finite value with, where its constants are uncertain, the band it lies in. */
public record Reading(double value, Optional<Band> band) {
    public Reading {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a reading must be finite, got " + value);
        }
    }

    /** A value without a band. */
    public static Reading of(double value) {
        return new Reading(value, Optional.empty());
    }
}
