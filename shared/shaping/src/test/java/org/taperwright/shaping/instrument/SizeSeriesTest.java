package org.taperwright.shaping.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.Given;

class SizeSeriesTest {
    /** ISO 3630-1: 15 to 60 by 5, then by 10 (from memory, high confidence). */
    @Test
    void sizesAreThoseOfTheStandardBetweenTwo() {
        assertThat(SizeSeries.sizesBetween(45, 90)).containsExactly(45, 50, 55, 60, 70, 80, 90);
        assertThat(SizeSeries.sizesBetween(1, 12)).containsExactly(6, 8, 10);
        assertThat(SizeSeries.sizesBetween(11, 14)).isEmpty();
    }

    /** ISO 3630-1 colours from 15 on: white, yellow, red, blue, green, black (from memory, high confidence). */
    @Test
    void aRangeMakesAnEntryForEachSizeTaperAndLength() {
        SizeSeries series =
                new SizeSeries("K-type file", SizeSeries.sizesBetween(15, 40), List.of(0.02), List.of(21.0, 25.0));
        List<Instrument> made = series.instruments(List.of());
        assertThat(made)
                .extracting(each ->
                        Designation.of(each).text() + " " + each.design().lengthMm())
                .containsExactly(
                        "15/.02 21.0",
                        "15/.02 25.0",
                        "20/.02 21.0",
                        "20/.02 25.0",
                        "25/.02 21.0",
                        "25/.02 25.0",
                        "30/.02 21.0",
                        "30/.02 25.0",
                        "35/.02 21.0",
                        "35/.02 25.0",
                        "40/.02 21.0",
                        "40/.02 25.0");
        assertThat(made.stream()
                        .map(each -> Designation.of(each).colour().orElseThrow())
                        .distinct()
                        .toList())
                .containsExactly(
                        SizeColour.WHITE,
                        SizeColour.YELLOW,
                        SizeColour.RED,
                        SizeColour.BLUE,
                        SizeColour.GREEN,
                        SizeColour.BLACK);
    }

    @Test
    void theDesignIsAssumedFromTheNearestOfTheTypeAndSaysSo() {
        Instrument far =
                Given.rotary(20, 0.06).draft().name("far").type("rotary file").instrument();
        Instrument near =
                Given.rotary(35, 0.06).draft().name("near").type("rotary file").instrument();
        Instrument other = Given.hand(30, 0.02);
        Instrument made = new SizeSeries("rotary file", List.of(30), List.of(0.04), List.of(25.0))
                .instruments(List.of(far, near, other))
                .get(0);
        assertThat(made.designAssumed()).isTrue();
        assertThat(made.note()).isEqualTo("Design assumed from near");
        assertThat(made.drive()).isEqualTo(Drive.POWERED);
        assertThat(made.design().alloy()).isEqualTo(near.design().alloy());
        assertThat(made.name()).isEqualTo("rotary file 30/.04");
    }

    @Test
    void withoutOneOfTheTypeTheDesignIsTheStandardsPlainOne() {
        Instrument made = new SizeSeries("file", List.of(25), List.of(0.02), List.of(31.0))
                .instruments(List.of())
                .get(0);
        assertThat(made.note()).isEqualTo("Design assumed: the standard's plain design");
        assertThat(made.design().lengthMm()).isEqualTo(31);
        assertThat(made.design().workingPartMm()).isEqualTo(16);
    }

    @Property(tries = 100)
    void eachEntryHasTheSizeTaperAndLengthAskedFor(
            @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 1, max = 200) Integer> sizes,
            @ForAll @Size(min = 1, max = 3) List<@DoubleRange(min = 0, max = 0.12) Double> tapers,
            @ForAll @Size(min = 1, max = 3) List<@DoubleRange(min = 5, max = 40) Double> lengths) {
        SizeSeries series = new SizeSeries("file", sizes, tapers, lengths);
        List<Instrument> made = series.instruments(List.of());
        assertThat(made).hasSize(sizes.size() * tapers.size() * lengths.size());
        for (int i = 0; i < made.size(); i++) {
            Designation designation = Designation.of(made.get(i));
            assertThat(designation.size()).isEqualTo(sizes.get(i / (tapers.size() * lengths.size())));
            assertThat(designation.taper()).isEqualTo(tapers.get(i / lengths.size() % tapers.size()));
            assertThat(made.get(i).design().lengthMm()).isEqualTo(lengths.get(i % lengths.size()));
            assertThat(made.get(i).design().workingPartMm())
                    .isLessThanOrEqualTo(made.get(i).design().lengthMm());
        }
    }

    @Test
    void whatIsNoSeriesIsAFault() {
        assertThat(faults(new SizeSeries(" ", List.of(0), List.of(Double.NaN), List.of(-1.0))))
                .isEqualTo("type: nothing is entered; expected a type, such as K-type file\n"
                        + "sizes: size 0 is none; expected 1 to 2000\n"
                        + "tapers: a taper of not a number is none; expected 0 to 1 mm per mm\n"
                        + "lengthsMm: a length of -1 mm is none; expected up to 200 mm");
        SizeSeries none = new SizeSeries("file", List.of(), List.of(0.02), List.of(25.0));
        assertThat(faults(none)).isEqualTo("sizes: would make 0 instruments; expected 1 to 5000");
        assertThatIllegalStateException().isThrownBy(() -> none.instruments(List.of()));
    }

    @Test
    void whatTheStandardDoesNotHaveIsUnusual() {
        SizeSeries series = new SizeSeries("file", List.of(17), List.of(0.02), List.of(19.0));
        assertThat(series.faults()).extracting(Fault::weight).containsOnly(Fault.Weight.UNUSUAL);
        assertThat(faults(series))
                .isEqualTo("sizes: the standard's series has no size 17;"
                        + " expected one of 06, 08, 10, 15 to 60 by 5, 70 to 140 by 10\n"
                        + "lengthsMm: the standard has no length of 19 mm;"
                        + " expected 21, 25, 28 or 31 mm, or the maker's own");
        assertThat(series.instruments(List.of())).hasSize(1);
    }

    private static String faults(SizeSeries series) {
        return series.faults().stream().map(Fault::sentence).collect(Collectors.joining("\n"));
    }
}
