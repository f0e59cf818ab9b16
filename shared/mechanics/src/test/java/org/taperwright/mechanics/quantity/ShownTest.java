package org.taperwright.mechanics.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShownTest {
    @ParameterizedTest
    @CsvSource({
        "0.43999999999, 0.44",
        "0.25, 0.25",
        "1234.5, 1230",
        "193000, 193000",
        "0, 0",
        "-0.0, 0",
        "-1.0049, -1",
        "0.00123456, 0.00123",
        "0.0000123456, 1.23·10⁻⁵",
        "-123456789, -1.23·10⁸",
        "99.96, 100"
    })
    void numbersHaveThreeSignificantDigits(double value, String text) {
        assertThat(Shown.number(value)).isEqualTo(text);
    }

    @Test
    void whatIsNoNumberIsSaidInWords() {
        assertThat(Shown.number(Double.NaN)).isEqualTo("not a number");
        assertThat(Shown.mm(Double.POSITIVE_INFINITY)).isEqualTo("infinite mm");
        assertThat(Shown.degrees(Double.NEGATIVE_INFINITY)).isEqualTo("minus infinite°");
    }

    @Test
    void theTradesOwnFormsAreKept() {
        assertThat(Shown.mm(0.1 + 0.2)).isEqualTo("0.3 mm");
        assertThat(Shown.mm(16)).isEqualTo("16 mm");
        assertThat(Shown.diameter(0.3)).isEqualTo("0.30 mm");
        assertThat(Shown.degrees(-29.99999999)).isEqualTo("-30°");
        assertThat(Shown.percent(0.04)).isEqualTo("4 %");
        assertThat(Shown.rpm(299.7)).isEqualTo("300 rpm");
        assertThat(Shown.torque(20)).isEqualTo("2 N·cm");
        assertThat(Shown.torqueInBoth(2.344)).isEqualTo("2.34 N·mm (0.234 N·cm)");
        assertThat(Shown.of(193_000, Unit.MEGAPASCAL)).isEqualTo("193000 MPa");
        assertThat(Shown.of(1.5, Unit.NEWTON)).isEqualTo("1.5 N");
        assertThat(Shown.of(1.5, Unit.NONE)).isEqualTo("1.5");
    }

    @Test
    void aMomentOfTheStandardsTableComesBackInGramCentimetres() {
        // ANSI/ADA 28, size 25: 120 g·cm = 11.77 N·mm (from memory, medium confidence; the conversion is a definition)
        assertThat(Shown.benchMoment(11.77)).isEqualTo("11.8 N·mm (1.18 N·cm, 120 g·cm)");
    }

    @ParameterizedTest
    @CsvSource({"25, 0.04, 25/.04", "6, 0.02, 06/.02", "30, 0.045, 30/.045", "40, 0.1, 40/.10", "20, -0.02, 20/-.02"})
    void designationsNameSizeAndTaper(int size, double taper, String text) {
        assertThat(Shown.designation(size, taper)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.25 mm, MILLIMETRE, 0.25",
        "'0,25', MILLIMETRE, 0.25",
        ".25mm, MILLIMETRE, 0.25",
        "2 N·cm, NEWTON_MILLIMETRE, 20",
        "2 Ncm, NEWTON_MILLIMETRE, 20",
        "2 N.cm, NEWTON_MILLIMETRE, 20",
        "20 N mm, NEWTON_CENTIMETRE, 2",
        "100 g·cm, NEWTON_MILLIMETRE, 9.80665",
        "4 %, NONE, 0.04",
        "4, PERCENT, 4",
        "0.04, NONE, 0.04",
        "−30°, DEGREE, -30",
        "75 deg, DEGREE, 75",
        "300 rev/min, RPM, 300",
        "1.5e3 MPa, MEGAPASCAL, 1500",
        "+3 N, NEWTON, 3"
    })
    void entriesAreReadWithOrWithoutTheirUnit(String text, Unit asked, double value) {
        assertThat(Entry.read(text, asked, "field"))
                .isInstanceOfSatisfying(
                        Entry.Given.class, given -> assertThat(given.value()).isCloseTo(value, within(1e-12)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "mm", "abc", "1.2.3", "--1", "1 N", "1 %", "NaN", "Infinity", "1e999", "1 2"})
    void whatIsNoLengthIsAFaultThatSaysWhatWasExpected(String text) {
        assertThat(Entry.read(text, Unit.MILLIMETRE, "taper[1].toMm"))
                .isInstanceOfSatisfying(Entry.Faulty.class, faulty -> {
                    assertThat(faulty.fault().where()).isEqualTo("taper[1].toMm");
                    assertThat(faulty.fault().expected()).isEqualTo("a number, with or without mm");
                });
    }

    @Test
    void aTorqueMayBeEnteredInAnyOfItsUnits() {
        assertThat(Entry.read("2 kg", Unit.NEWTON_MILLIMETRE, "torqueNmm"))
                .isInstanceOfSatisfying(
                        Entry.Faulty.class,
                        faulty -> assertThat(faulty.fault().sentence())
                                .isEqualTo("torqueNmm: \"kg\" is no unit for this; "
                                        + "a number, with or without N·mm or N·cm or g·cm"));
    }

    @Test
    void unitsOfDifferentKindsDoNotTurnIntoEachOther() {
        assertThatThrownBy(() -> Unit.NEWTON.in(Unit.RPM, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property
    void anyNumberIsReadBackAsWritten(@ForAll double value) {
        assertThat(Entry.read(Shown.number(value, 0, 6), Unit.NONE, "x"))
                .isInstanceOfSatisfying(
                        Entry.Given.class,
                        given -> assertThat(given.value()).isCloseTo(value, within(1e-6 + 1e-12 * Math.abs(value))));
        assertThat(Shown.number(value)).doesNotContain("E").hasSizeLessThan(16);
    }

    @Property
    void anyTextIsReadOrFaultedNeverThrown(@ForAll String text) {
        assertThat(Entry.read(text, Unit.PERCENT, "x")).isNotNull();
    }
}
