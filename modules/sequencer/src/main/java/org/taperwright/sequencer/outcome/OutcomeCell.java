package org.taperwright.sequencer.outcome;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Shown;

/**
 * A number of the outcome. One that needs a band is not shown before that is there.
 *
 * @param value the number; absent where there is none
 * @param band its 5 to 95 %; absent where it has none, or not yet
 * @param awaited whether the band is still to come
 * @param note what else is to be said of it; may be empty
 */
public record OutcomeCell(Optional<Double> value, Optional<Band> band, boolean awaited, String note) {
    /** Below this a number is only said to be small. */
    private static final double SMALL = 1e-4;

    private static final double FEW = 1e-2;
    private static final int DECIMALS = 4;
    private static final MathContext TWO = new MathContext(2, RoundingMode.HALF_EVEN);
    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_EVEN);

    /** Nothing to show. */
    static final OutcomeCell NONE = new OutcomeCell(Optional.empty(), Optional.empty(), false, "");

    /** A number without a band. */
    public static OutcomeCell of(double value) {
        return new OutcomeCell(Optional.of(value), Optional.empty(), false, "");
    }

    /** The same with a note. */
    OutcomeCell noted(String words) {
        return new OutcomeCell(value, band, awaited, words);
    }

    /** The same with its numbers multiplied by one above 0. */
    OutcomeCell times(double factor) {
        return new OutcomeCell(
                value.map(number -> number * factor),
                band.map(ends -> new Band(ends.low() * factor, ends.high() * factor)),
                awaited,
                note);
    }

    /** The number in words: three significant digits; a dash where there is none, dots where its band is still to come. */
    public String valueWords() {
        return awaited ? "…" : value.map(OutcomeCell::shown).orElse("–");
    }

    /** Its band in words: empty where it has none. */
    public String bandWords() {
        if (awaited) {
            return "computing";
        }
        return band.map(OutcomeCell::written).orElse("");
    }

    /** Value and band in one line. */
    @Override
    public String toString() {
        return bandWords().isEmpty() ? valueWords() : valueWords() + " (" + bandWords() + ")";
    }

    /** The ends of a band in two significant digits, since they are themselves known within 8 to 10 %; in three where they then differ. */
    static String written(Band band) {
        for (MathContext digits : List.of(TWO, THREE)) {
            String low = written(rounded(band.low(), digits));
            String high = written(rounded(band.high(), digits));
            if (!low.equals(high)) {
                return low + " to " + high;
            }
        }
        return band.low() == 0 && band.high() == 0 ? "" : "hardly varies";
    }

    private static double rounded(double value, MathContext digits) {
        return value == 0 ? 0 : new BigDecimal(value, digits).doubleValue();
    }

    /** Three significant digits, but no more decimals than a column has room for. */
    private static String shown(double value) {
        double size = Math.abs(value);
        return size >= SMALL && size < FEW ? Shown.number(value, 0, DECIMALS) : written(value);
    }

    /** Three significant digits; what is too small to matter is said to be so. */
    public static String written(double value) {
        double size = Math.abs(value);
        if (size > 0 && size < SMALL) {
            return size < SMALL * SMALL ? "0" : "< 0.0001";
        }
        return Shown.number(value);
    }
}
