package org.taperwright.shaping.instrument;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/**
 * What one piece costs.
 *
 * @param amount at most four decimals, not below zero; kept without needless zeros
 * @param currency code of ISO 4217, three capital letters, such as {@code EUR}
 */
public record Price(BigDecimal amount, String currency) {
    /** Greatest amount. */
    public static final long MOST = 1_000_000_000;

    private static final int DECIMALS = 4;
    private static final Pattern CODE = Pattern.compile("[A-Z]{3}");

    public Price {
        BigDecimal bare = amount.stripTrailingZeros();
        amount = bare.scale() < 0 ? bare.setScale(0) : bare;
        if (amount.signum() < 0 || amount.compareTo(BigDecimal.valueOf(MOST)) > 0) {
            throw new IllegalArgumentException("has an amount below 0 or above " + MOST);
        }
        if (amount.scale() > DECIMALS) {
            throw new IllegalArgumentException("has an amount of more than " + DECIMALS + " decimals");
        }
        if (!CODE.matcher(currency).matches()) {
            throw new IllegalArgumentException("has a currency that is no code of three capital letters");
        }
    }

    /** As written: {@code 12.50 EUR}, with at least two decimals. */
    public String text() {
        return amount.setScale(Math.max(2, amount.scale())).toPlainString() + ' ' + currency;
    }
}
