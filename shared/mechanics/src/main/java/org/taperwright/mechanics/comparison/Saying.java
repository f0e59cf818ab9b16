package org.taperwright.mechanics.comparison;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.taperwright.mechanics.quantity.Shown;

/**
 * How a ratio to the datum is said: {@code snaps at 0.6 of the torque}, {@code 1.9 times as flexible}.
 *
 * @param before words before the ratio; may be empty
 * @param after words after it
 * @param asMuch whether it is said as "times as" whichever side of one the ratio lies on
 */
public record Saying(String before, String after, boolean asMuch) {
    /** {@code BEFORE 0.6 of AFTER}, {@code BEFORE 1.9 times AFTER}. */
    public static Saying of(String before, String after) {
        return new Saying(before, after, false);
    }

    /** {@code 1.9 times as QUALITY}. */
    public static Saying as(String quality) {
        return new Saying("", "as " + quality, true);
    }

    /** The words for a ratio, to two digits at most: more would say more than is known. */
    public String words(double ratio) {
        String times = asMuch || ratio >= 1 ? " times " : " of ";
        return (before.isEmpty() ? "" : before + " ") + twoDigits(ratio) + times + after;
    }

    /** A ratio in two significant digits. */
    static String twoDigits(double ratio) {
        return Shown.number(new BigDecimal(ratio)
                .round(new MathContext(2, RoundingMode.HALF_EVEN))
                .doubleValue());
    }
}
