package org.taperwright.shaping.instrument;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text without what people spell differently while meaning the same: case, accents, spaces, hyphens and other signs, and the
 * spelling of numbers. {@code 25/.04}, {@code 25/0,04}, {@code 25 / 4 %} and {@code 25/04} are one: the trade writes tapers
 * in all these ways (common practice, no source).
 */
final class FoldedText {
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern TAPER_IN_HUNDREDTHS = Pattern.compile("(?<=\\d)(\\s*/\\s*)0(\\d)(?![\\d.,])");
    private static final Pattern PART = Pattern.compile("(\\d+[.,]\\d+|[.,]?\\d+)(\\s*%)?|\\p{L}+");
    private static final int LONGEST_NUMBER = 30;

    private FoldedText() {}

    static String of(String text) {
        String plain = ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
        Matcher part = PART.matcher(TAPER_IN_HUNDREDTHS.matcher(plain).replaceAll("$1.0$2"));
        StringBuilder folded = new StringBuilder();
        while (part.find()) {
            if (part.group(1) == null) {
                folded.append(part.group());
            } else {
                folded.append('|')
                        .append(number(part.group(1), part.group(2) != null))
                        .append('|');
            }
        }
        return folded.toString();
    }

    private static String number(String digits, boolean percent) {
        if (digits.length() > LONGEST_NUMBER) {
            return digits;
        }
        String pointed = digits.replace(',', '.');
        BigDecimal value = new BigDecimal(pointed.startsWith(".") ? "0" + pointed : pointed);
        BigDecimal bare = (percent ? value.movePointLeft(2) : value).stripTrailingZeros();
        return bare.signum() == 0 ? "0" : bare.toPlainString();
    }
}
