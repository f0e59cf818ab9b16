package org.taperwright.catalogue.ui.entry;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import org.taperwright.shaping.instrument.Price;
import org.taperwright.shaping.instrument.PriceText;
import org.taperwright.workbench.ui.Written;

/** How a price is written in a field: {@code 12.50 EUR}. */
final class Prices {
    private static final Pattern AMOUNT = Pattern.compile("\\d{1,10}(?:[.,]\\d{1,4})?");
    private static final BigDecimal MOST = BigDecimal.valueOf(Price.MOST);

    private Prices() {}

    /** A price, or none. */
    static Written<Optional<Price>> written() {
        return new Written<>(
                Prices::read,
                price -> price.map(Price::text).orElse(""),
                "an amount and a currency such as 12.50 EUR; empty when not known");
    }

    private static Optional<Optional<Price>> read(String text) {
        return text.isBlank()
                ? Optional.of(Optional.empty())
                : PriceText.of(text).flatMap(Prices::price).map(Optional::of);
    }

    private static Optional<Price> price(PriceText parts) {
        return Optional.of(parts.amount())
                .filter(amount -> AMOUNT.matcher(amount).matches())
                .map(amount -> new BigDecimal(amount.replace(',', '.')))
                .filter(amount -> amount.compareTo(MOST) <= 0)
                .flatMap(amount -> parts.currency().map(code -> new Price(amount, code)));
    }
}
