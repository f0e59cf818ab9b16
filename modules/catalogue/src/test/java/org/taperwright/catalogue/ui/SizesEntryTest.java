package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SizesEntryTest {
    @Test
    void a_range_means_the_sizes_of_the_standards_series() {
        // ISO 3630-1: 15 to 60 by 5, then 70 to 140 by 10
        assertThat(SizesEntry.of("50 – 80").sizes()).containsExactly(50, 55, 60, 70, 80);
        assertThat(SizesEntry.of("06-15").sizes()).containsExactly(6, 8, 10, 15);
    }

    @Test
    void several_sizes_stand_between_commas_and_a_size_out_of_the_series_stands_alone() {
        assertThat(SizesEntry.of("25, 17,25").sizes()).containsExactly(17, 25);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5", "141", "40-15", "25,", "twenty", "25.5", "11-14"})
    void what_is_no_size_is_said_with_what_is_expected(String text) {
        SizesEntry entry = SizesEntry.of(text);

        assertThat(entry.sizes()).isEmpty();
        assertThat(entry.fault()).contains("“" + text + "”").contains("15–40");
    }
}
