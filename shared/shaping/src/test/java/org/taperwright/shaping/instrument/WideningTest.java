package org.taperwright.shaping.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.Given;

class WideningTest {
    private static final Widening ASSUMED = Widening.ASSUMED_DESIGN;

    private static Reading reading(double value, double low, double high) {
        return new Reading(value, Optional.of(new Band(low, high)));
    }

    /**
     * Second moments of area of the regular polygons inscribed in a circle of radius r: square {@code r^4 / 3},
     * triangle {@code 9 sqrt(3) r^4 / 96} (handbook formulas for side a: a^4 / 12 and sqrt(3) a^4 / 96).
     */
    @Test
    void theFactorCoversTheDifferenceOfSquareAndTriangle() {
        double square = Math.pow(Math.sqrt(2), 4) / 12;
        double triangle = Math.sqrt(3) * Math.pow(Math.sqrt(3), 4) / 96;
        assertThat(square / triangle).isCloseTo(ASSUMED.factor(), within(0.06));
    }

    @Test
    void aBandIsWidenedByRatioAndAValueWithoutOneGetsOne() {
        assertThat(ASSUMED.of(reading(3, 2, 5))).isEqualTo(reading(3, 1, 10));
        assertThat(ASSUMED.of(Reading.of(3))).isEqualTo(reading(3, 1.5, 6));
    }

    @Test
    void aValueThatIsNotAboveZeroIsWidenedByDifference() {
        assertThat(ASSUMED.of(reading(-30, -35, -28))).isEqualTo(reading(-30, -60, 0));
        assertThat(ASSUMED.of(reading(0, -1, 2))).isEqualTo(reading(0, -2, 4));
        assertThat(ASSUMED.of(Reading.of(0))).isEqualTo(reading(0, 0, 0));
    }

    @Property
    void aWidenedBandHoldsTheBand(
            @ForAll @DoubleRange(min = -100, max = 100) double value,
            @ForAll @DoubleRange(min = 0, max = 50) double below,
            @ForAll @DoubleRange(min = 0, max = 50) double above) {
        Reading widened = ASSUMED.of(reading(value, value - below, value + above));
        Band band = widened.band().orElseThrow();
        assertThat(widened.value()).isEqualTo(value);
        assertThat(band.low()).isLessThanOrEqualTo(value - below);
        assertThat(band.high()).isGreaterThanOrEqualTo(value + above);
    }

    @Test
    void onlyAnAssumedDesignIsWidened() {
        Instrument known = Given.rotary(25, 0.06);
        assertThat(Widening.of(known)).isEmpty();
        assertThat(Widening.of(known.draft().designAssumed(true).instrument())).contains(ASSUMED);
        assertThat(ASSUMED.sentence())
                .isEqualTo("The design is assumed by type: its bands are widened by a factor of 2"
                        + " (common practice, no source).");
    }

    @Test
    void aFactorBelowOneIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Widening(0.9, "", ""));
        assertThatIllegalArgumentException().isThrownBy(() -> new Widening(Double.NaN, "", ""));
    }

    @Test
    void theAssessmentOfAnAssumedEntryHasWiderBandsAndAnIndexHasNone() {
        Instrument known = Given.rotary(25, 0.06);
        InstrumentAssessment sure =
                InstrumentAssessments.of(known, Progress.NONE).orElseThrow();
        InstrumentAssessment guess = InstrumentAssessments.of(
                        known.draft().designAssumed(true).instrument(), Progress.NONE)
                .orElseThrow();
        assertThat(sure.assessment().design()).isEqualTo(known.design());
        assertThat(Metrics.all()).extracting(Metric::standing).contains(Standing.values());
        for (Metric metric : Metrics.all()) {
            Reading reading = metric.read(sure.assessment());
            assertThat(sure.read(metric)).isEqualTo(reading);
            assertThat(sure.standing(metric)).isEqualTo(metric.standing());
            boolean index = metric.standing() == Standing.INDEX;
            assertThat(guess.read(metric))
                    .as(metric.id())
                    .isEqualTo(index && reading.band().isEmpty() ? reading : ASSUMED.of(reading));
            assertThat(guess.standing(metric)).isEqualTo(index ? Standing.INDEX : Standing.ESTIMATE);
        }
    }
}
