package org.taperwright.shaping.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PriceTextTest {
    @ParameterizedTest
    @CsvSource({"12.50 EUR, 12.50, EUR", "'EUR12,50', '12,50', EUR", "€ 12, 12, EUR", "8 chf, 8, CHF"})
    void theCurrencyStandsBeforeOrAfterTheAmount(String text, String amount, String currency) {
        assertThat(PriceText.of(text)).contains(new PriceText(amount, Optional.of(currency)));
    }

    @Test
    void anAmountAloneHasNoCurrency() {
        assertThat(PriceText.of(" 12.50 ")).contains(new PriceText("12.50", Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"EUR 12 EUR", "twelve", "12 EURO", "12 E"})
    void whatIsNoPriceIsNotTakenApart(String text) {
        assertThat(PriceText.of(text)).isEmpty();
    }
}
