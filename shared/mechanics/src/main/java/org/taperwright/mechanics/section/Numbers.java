package org.taperwright.mechanics.section;

import java.util.Locale;

/** Numbers inside sentences. */
final class Numbers {
    private Numbers() {}

    /** Up to four digits after the point, without trailing zeros; words for what is no number. */
    static String text(double value) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "not a number" : "infinite";
        }
        String text = String.format(Locale.ROOT, "%.4f", value);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "").replaceAll("^-0$", "0");
    }
}
