package org.taperwright.mechanics.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

class SamplingTest {
    private static Reading about(double value, double low, double high) {
        return new Reading(value, Optional.of(new Band(low, high)));
    }

    /** What rises with one constant alone has that constant's band, carried over. */
    @Test
    void theBandOfWhatRisesWithOneConstantIsThatOfTheConstant() {
        Reading cubed = Sampling.reading(List.of(about(2, 1.5, 3)), c -> c[0] * c[0] * c[0]);
        assertThat(cubed.value()).isEqualTo(8);
        assertThat(cubed.band().orElseThrow().low()).isCloseTo(Math.pow(1.5, 3), within(0.1));
        assertThat(cubed.band().orElseThrow().high()).isCloseTo(27, within(1.5));
    }

    /** Logarithms of a product add: with equal bands of two factors the widths add by their squares. */
    @Test
    void theBandOfAProductIsThatOfTheSumOfLogarithms() {
        Reading product = Sampling.reading(List.of(about(1, 0.5, 2), about(1, 0.5, 2)), c -> c[0] * c[1]);
        assertThat(Math.log(product.band().orElseThrow().high())).isCloseTo(Math.sqrt(2) * Math.log(2), within(0.12));
        assertThat(Math.log(product.band().orElseThrow().low())).isCloseTo(-Math.sqrt(2) * Math.log(2), within(0.12));
    }

    @Test
    void aConstantWithoutABandAddsNone() {
        Reading reading = Sampling.reading(List.of(Reading.of(3)), c -> 2 * c[0]);
        assertThat(reading.band()).contains(new Band(6, 6));
    }

    @Test
    void theSameSamplesAreTakenEachTime() {
        List<Reading> constants = List.of(about(-0.48, -0.56, -0.4), about(3, 2, 4));
        assertThat(Sampling.reading(constants, c -> Math.exp(c[0]) * c[1]))
                .isEqualTo(Sampling.reading(constants, c -> Math.exp(c[0]) * c[1]));
    }

    @Property
    void theValueLiesWithinItsBandAndTheEdgesAreDrawnAtTheirQuantiles(
            @ForAll @DoubleRange(min = 0.1, max = 10) double value,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double below,
            @ForAll @DoubleRange(min = 1.01, max = 5) double above) {
        Reading constant = about(value, value * below, value * above);
        assertThat(Sampling.drawn(constant, -1.6448536269514722)).isCloseTo(value * below, within(1e-9 * value));
        assertThat(Sampling.drawn(constant, 1.6448536269514722)).isCloseTo(value * above, within(1e-9 * value));
        Band band = Sampling.reading(List.of(constant), c -> c[0]).band().orElseThrow();
        assertThat(value).isBetween(band.low(), band.high());
    }

    /** For a product of powers the logarithm is straight, so the edges tell all; the samples themselves are the check. */
    @Test
    void solvingAtTheEdgesGivesTheBandOfTheSamplesForAProductOfPowers() {
        List<Reading> constants = List.of(about(2, 1.5, 3), about(0.5, 0.2, 0.9), Reading.of(7));
        ToDoubleFunction<double[]> result = c -> c[0] * c[0] / c[1] * c[2];
        Band sampled = Sampling.reading(constants, result).band().orElseThrow();
        Reading solved = Sampling.solvedAtTheEdges(constants, result);
        assertThat(solved.value()).isEqualTo(56);
        assertThat(solved.band().orElseThrow().low()).isCloseTo(sampled.low(), within(1e-4 * sampled.low()));
        assertThat(solved.band().orElseThrow().high()).isCloseTo(sampled.high(), within(1e-4 * sampled.high()));
    }
}
