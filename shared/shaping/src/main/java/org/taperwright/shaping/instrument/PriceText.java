package org.taperwright.shaping.instrument;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A price as people write it, taken apart: an amount, with the code of its currency (ISO 4217) or the euro's sign before or
 * after it, or with neither.
 *
 * @param amount the digits as they stand, with whatever sign for decimals
 * @param currency the currency's code; absent when none is written
 */
public record PriceText(String amount, Optional<String> currency) {
    private static final Pattern CODE = Pattern.compile("[A-Za-z]{3}");
    private static final Pattern PRICE = Pattern.compile("(?:([A-Za-z]{3}|€)\\s*)?([^A-Za-z€]*?)\\s*([A-Za-z]{3}|€)?");

    /** Takes a text apart; empty when it is no price, or names a currency twice. */
    public static Optional<PriceText> of(String text) {
        Matcher parts = PRICE.matcher(text.strip());
        if (!parts.matches() || parts.group(1) != null && parts.group(3) != null) {
            return Optional.empty();
        }
        Optional<String> named = Optional.ofNullable(parts.group(1)).or(() -> Optional.ofNullable(parts.group(3)));
        return Optional.of(new PriceText(parts.group(2).strip(), named.flatMap(PriceText::currency)));
    }

    /** The currency that a spelling names. */
    public static Optional<String> currency(String spelling) {
        String bare = spelling.strip();
        if (bare.equals("€")) {
            return Optional.of("EUR");
        }
        return CODE.matcher(bare).matches() ? Optional.of(bare.toUpperCase(Locale.ROOT)) : Optional.empty();
    }
}
