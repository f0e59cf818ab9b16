package org.taperwright.catalogue.ui.entry;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.taperwright.shaping.instrument.Price;
import org.taperwright.workbench.ui.Written;

/** How a price is written in a field: {@code 12.50 EUR}. */
final class Prices {
    private static final Pattern PRICE = Pattern.compile("(\\d{1,10}(?:[.,]\\d{1,4})?)\\s*([A-Za-z]{3})");

    private Prices() {}

    /** A price, or none. */
    static Written<Optional<Price>> written() {
        return new Written<>(
                Prices::read,
                price -> price.map(Price::text).orElse(""),
                "an amount and a currency such as 12.50 EUR; empty when not known");
    }

    private static Optional<Optional<Price>> read(String text) {
        if (text.isBlank()) {
            return Optional.of(Optional.empty());
        }
        Matcher matcher = PRICE.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        BigDecimal amount = new BigDecimal(matcher.group(1).replace(',', '.'));
        return amount.compareTo(BigDecimal.valueOf(Price.MOST)) > 0
                ? Optional.empty()
                : Optional.of(Optional.of(new Price(amount, matcher.group(2).toUpperCase(Locale.ROOT))));
    }
}
