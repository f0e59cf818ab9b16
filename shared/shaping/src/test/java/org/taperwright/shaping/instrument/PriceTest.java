package org.taperwright.shaping.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriceTest {
    @ParameterizedTest
    @CsvSource({
        "12.5,12.50 EUR",
        "12.500,12.50 EUR",
        "100,100.00 EUR",
        "1E+2,100.00 EUR",
        "0,0.00 EUR",
        "0.1234,0.1234 EUR"
    })
    void aPriceIsWrittenWithAtLeastTwoDecimals(BigDecimal amount, String text) {
        assertThat(new Price(amount, "EUR").text()).isEqualTo(text);
    }

    @Test
    void pricesAreEqualHoweverTheirZerosAreWritten() {
        assertThat(new Price(new BigDecimal("12.50"), "EUR")).isEqualTo(new Price(new BigDecimal("12.5"), "EUR"));
    }

    /** ISO 4217: three letters. */
    @ParameterizedTest
    @CsvSource({"-1,EUR", "1000000001,EUR", "0.12345,EUR", "1,eur", "1,EURO", "1,€"})
    void whatIsNoPriceIsRefused(BigDecimal amount, String currency) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Price(amount, currency));
    }
}
