package org.taperwright.shaping.instrument;

import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Shown;

/**
 * How much wider a band is drawn, and why. A value above zero is widened by ratio: {@code low / f} to {@code high * f}. Any
 * other, such as an angle, by difference: the distances of both ends from the value grow {@code f} times, and by at least
 * {@code f - 1} times the value's size. A value without a band gets one so.
 *
 * @param factor f, at least 1
 * @param reason why
 * @param source where the factor comes from
 */
public record Widening(double factor, String reason, String source) {
    /**
     * For a design that is assumed by type rather than known. K-type files are ground or twisted from square and from
     * triangular blanks; at one diameter the square's second moment of area is {@code (1/48) / (9 sqrt(3) / 1536) = 2.05}
     * times the triangle's (geometry of figures inscribed in a circle). That this stands for all that an assumption can
     * miss is common practice, no source.
     */
    public static final Widening ASSUMED_DESIGN = new Widening(2, "assumed by type", "common practice, no source");

    public Widening {
        if (!(factor >= 1) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("no widening: " + factor);
        }
    }

    /** The widening that an entry's values need; absent when its design is known. */
    public static Optional<Widening> of(Instrument instrument) {
        return instrument.designAssumed() ? Optional.of(ASSUMED_DESIGN) : Optional.empty();
    }

    /** A value with its band made wider. */
    public Reading of(Reading reading) {
        double value = reading.value();
        double low = reading.band().map(Band::low).orElse(value);
        double high = reading.band().map(Band::high).orElse(value);
        if (low > 0 && value > 0) {
            return new Reading(value, Optional.of(new Band(low / factor, high * factor)));
        }
        double least = (factor - 1) * Math.abs(value);
        return new Reading(
                value,
                Optional.of(new Band(
                        value - Math.max(least, factor * (value - low)),
                        value + Math.max(least, factor * (high - value)))));
    }

    /** One sentence for where the values are shown. */
    public String sentence() {
        return "The design is " + reason + ": its bands are widened by a factor of " + Shown.number(factor) + " ("
                + source + ").";
    }
}
