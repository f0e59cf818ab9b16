package org.taperwright.mechanics.quantity;

/** The 5 to 95 % range of an uncertain value, in the value's own unit. */
public record Band(double low, double high) {
    public Band {
        if (!(low <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
            throw new IllegalArgumentException("a band needs finite low <= high, got " + low + " to " + high);
        }
    }
}
