package org.taperwright.mechanics.uncertainty;

/**
 * What is known of an uncertain constant: the ends between which its sources place it, all values between alike.
 *
 * @param low lower end
 * @param high upper end
 * @param byRatio whether equal ratios are alike rather than equal differences; then both ends are above zero
 */
public record Spread(double low, double high, boolean byRatio) {
    public Spread {
        if (!(low <= high) || !Double.isFinite(low) || !Double.isFinite(high) || byRatio && low <= 0) {
            throw new IllegalArgumentException("no spread: " + low + " to " + high);
        }
    }

    /** Equal differences alike. */
    public static Spread even(double low, double high) {
        return new Spread(low, high, false);
    }

    /** Equal ratios alike. */
    public static Spread byRatio(double low, double high) {
        return new Spread(low, high, true);
    }

    /** A constant that is known. */
    public static Spread exactly(double value) {
        return new Spread(value, value, false);
    }

    /** The value below which a share of all lie, 0 to 1. */
    public double at(double share) {
        return byRatio ? low * Math.pow(high / low, share) : low + share * (high - low);
    }

    /** The value that half of all lie below. */
    public double middle() {
        return at(0.5);
    }
}
