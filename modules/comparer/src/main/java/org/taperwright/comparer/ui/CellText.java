package org.taperwright.comparer.ui;

import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.comparison.ComparisonCell;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Shown;

/**
 * What stands in a cell of the table, ready to be drawn and read out.
 *
 * @param whole digits before the decimal point, with the sign
 * @param fraction decimal point and digits after it, or empty
 * @param band the 5 to 95 % band in words, or empty
 * @param ratio ratio to the datum, where there is one
 * @param ratioBand the ratio's 5 to 95 % band, where it has one
 * @param ratioWords the ratio; where there is none, the difference to the datum
 */
record CellText(
        String whole, String fraction, String band, OptionalDouble ratio, Optional<Band> ratioBand, String ratioWords) {
    /** A cell of a design that could not be computed. */
    static final CellText NONE = new CellText("–", "", "", OptionalDouble.empty(), Optional.empty(), "");

    /**
     * The text of a cell.
     *
     * @param datum whether the cell is the datum's own
     * @param datumKnown whether the datum could be computed
     */
    static CellText of(ComparisonCell cell, boolean datum, boolean datumKnown) {
        double number = cell.reading().value();
        String value = Shown.number(number);
        int point = value.indexOf('.');
        String whole = point < 0 ? value : value.substring(0, point);
        String fraction = point < 0 ? "" : value.substring(point);
        OptionalDouble ratio = datumKnown && !datum && number > 0 ? cell.ratio() : OptionalDouble.empty();
        return new CellText(
                whole,
                fraction,
                words(cell.reading().band()),
                ratio,
                ratio.isPresent() ? cell.ratioBand() : Optional.empty(),
                ratioWords(ratio, datum, datumKnown, cell.difference()));
    }

    /** The value as one text. */
    String value() {
        return whole + fraction;
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(value());
        if (!band.isEmpty()) {
            text.append(" (").append(band).append(')');
        }
        if (!ratioWords.isEmpty()) {
            text.append(", ").append(ratioWords.replace("Δ", "differs from the datum by"));
        }
        ratioBand.ifPresent(b -> text.append(" (").append(Shown.band(b)).append(')'));
        return text.toString();
    }

    private static String words(Optional<Band> band) {
        return band.map(Shown::band).orElse("");
    }

    private static String ratioWords(OptionalDouble ratio, boolean datum, boolean datumKnown, Reading difference) {
        if (datum) {
            return "datum";
        }
        if (ratio.isPresent()) {
            return "× " + Shown.number(ratio.getAsDouble());
        }
        if (!datumKnown) {
            return "";
        }
        return "Δ " + (difference.value() > 0 ? "+" : "") + Shown.number(difference.value())
                + difference.band().map(b -> " (" + Shown.band(b) + ")").orElse("");
    }
}
