package org.taperwright.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.design.Design;
import org.taperwright.shaping.instrument.Instrument;

/** The series of ISO 3630-1:1992: sizes, taper and diameters, recalled from memory with high confidence. */
class StandardSeriesTest {
    private static final List<Integer> SIZES =
            List.of(6, 8, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 70, 80, 90, 100, 110, 120, 130, 140);

    private final DemoThings things = DemoThings.read();

    @ParameterizedTest
    @ValueSource(
            strings = {"K-type file, square blank", "K-type file, triangular blank", "K-type reamer", "H-type file"})
    void everyTypeHasEverySize(String type) {
        List<Instrument> series = things.all(Instrument.class).stream()
                .filter(instrument -> instrument.type().equals(type))
                .toList();
        assertThat(series).extracting(Instrument::size).containsExactlyElementsOf(SIZES);
        assertThat(series).allSatisfy(instrument -> {
            assertThat(instrument.designAssumed()).isTrue();
            assertThat(instrument.design().workingPartMm()).isEqualTo(16);
            assertThat(instrument.design().note()).contains("ISO 3630-1", "from memory", "Assumed by type");
        });
    }

    /** Diameters at the projected tip, at 3 mm and at 16 mm. */
    @ParameterizedTest
    @CsvSource({"06,0.06,0.12,0.38", "25,0.25,0.31,0.57", "60,0.60,0.66,0.92", "140,1.40,1.46,1.72"})
    void diametersAreTheStandards(String size, double d0, double d3, double d16) {
        Design design =
                things.thing("k-square-" + size + "-l25", Instrument.class).design();
        assertThat(design.diameterMm(0)).isEqualTo(d0, within(1e-9));
        assertThat(design.diameterMm(3)).isEqualTo(d3, within(1e-9));
        assertThat(design.diameterMm(16)).isEqualTo(d16, within(1e-9));
    }

    /** K-type files 1.97 to 0.88 and reamers 0.80 to 0.28 flutes per mm: a textbook, from memory, medium confidence. */
    @ParameterizedTest
    @CsvSource({"k-square,1.97,0.88", "k-reamer,0.80,0.28"})
    void flutesFallFromTheFineToTheCoarseEndOfTheTextbooksRange(String type, double fine, double coarse) {
        double before = Double.MAX_VALUE;
        for (int size : SIZES) {
            double flutes = things.thing(type + String.format("-%02d-l25", size), Instrument.class)
                    .design()
                    .flutesPerMm(8);
            assertThat(flutes).isBetween(coarse, fine).isLessThanOrEqualTo(before);
            before = flutes;
        }
    }
}
