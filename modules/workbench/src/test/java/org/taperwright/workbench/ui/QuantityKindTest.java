package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityKindTest {
    private static final QuantityKind DIAMETER = QuantityKind.diameter(0.06, 1.4, 0.01);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"0.25 mm|0.25", "0.25|0.25", "0,25 mm|0.25", ".25|0.25", "250 µm|0.25", "  0.3mm |0.3"})
    void a_diameter_is_understood_with_and_without_its_unit(String text, double value) {
        assertThat(DIAMETER.value(text)).hasValue(value);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"0.25 inch", "wide", "0.2.5 mm", "mm", "''", "0.3 N·cm", "1e999 mm"})
    void what_is_no_diameter_is_not_taken_for_one(String text) {
        assertThat(DIAMETER.value(text)).isEmpty();
    }

    @Test
    void a_taper_may_be_written_in_per_cent() {
        assertThat(QuantityKind.taper().value("4 %")).hasValue(0.04);
        assertThat(QuantityKind.taper().value("\u22122%")).hasValue(-0.02);
        assertThat(QuantityKind.shareOfDiameter(0, 1, 0.1).value("5 %")).hasValue(0.05);
        assertThat(QuantityKind.shareOfDiameter(0, 1, 0.1).value("0.05 d")).hasValue(0.05);
        assertThat(QuantityKind.perMillimetre(0, 5, 0.1).value("1.2 per mm")).hasValue(1.2);
        assertThat(QuantityKind.perMillimetre(0, 5, 0.1).value("1.2/mm")).hasValue(1.2);
    }

    @Test
    void diameters_are_written_with_two_decimals_and_no_rounding_dust() {
        assertThat(DIAMETER.write(0.3)).isEqualTo("0.30 mm");
        assertThat(DIAMETER.write(0.1 + 0.2)).isEqualTo("0.30 mm");
        assertThat(DIAMETER.write(0.125)).isEqualTo("0.125 mm");
        assertThat(QuantityKind.degrees(0, 90, 5).write(75)).isEqualTo("75\u00b0");
    }

    @Test
    void steps_gather_no_rounding_errors_and_end_at_the_range() {
        double value = 0.06;
        for (int i = 0; i < 38; i++) {
            value = DIAMETER.stepped(value, 1);
        }
        assertThat(value).isEqualTo(0.44);
        assertThat(DIAMETER.stepped(1.4, 1)).isEqualTo(1.4);
    }

    @Test
    void the_expectation_names_unit_and_range() {
        assertThat(DIAMETER.expectation()).isEqualTo("a number in mm from 0.06 to 1.40");
    }
}
