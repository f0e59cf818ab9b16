package org.taperwright.mechanics.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;

class LatinHypercubeTest {
    /** McKay, Beckman and Conover 1979: by definition every slice of every constant holds one sample. */
    @Test
    void everySliceOfEveryConstantHoldsOneSample() {
        for (int constant = 0; constant < 3; constant++) {
            assertThat(drawn(List.of("a", "b", "c"), constant).stream()
                            .map(share -> (int) (share * LatinHypercube.SAMPLES)))
                    .doesNotHaveDuplicates()
                    .hasSize(LatinHypercube.SAMPLES);
        }
    }

    @Test
    void theBandOfAnEvenlySpreadConstantIsItsTwentiethAndItsNineteenTwentieths() {
        var band = LatinHypercube.of("a", "b")
                .sample(15, shares -> Spread.even(10, 20).at(shares[1]))
                .band()
                .orElseThrow();
        assertThat(band.low()).isCloseTo(10.5, within(0.06));
        assertThat(band.high()).isCloseTo(19.5, within(0.06));
    }

    @Test
    void aConstantHasTheSameDrawsInEveryCubeAndItsPlaceDoesNotMatter() {
        assertThat(drawn(List.of("wire", "dentine"), 1)).isEqualTo(drawn(List.of("dentine"), 0));
    }

    /** Of 200 independent pairs the correlation lies within ±0.2 with 99.5 % (standard error 1/√200 = 0.07). */
    @Test
    void constantsOfDifferentNamesAreDrawnIndependently() {
        double[] one = drawn(List.of("niti-superelastic.yieldMpa"), 0).stream()
                .mapToDouble(share -> share)
                .toArray();
        for (String name : List.of("niti-martensitic.yieldMpa", "niti-superelastic.youngMpa", "life.piece")) {
            double[] other =
                    drawn(List.of(name), 0).stream().mapToDouble(share -> share).toArray();
            assertThat(new PearsonsCorrelation().correlation(one, other))
                    .as(name)
                    .isBetween(-0.2, 0.2);
        }
    }

    @Test
    void whatTwoSampledValuesShareCancelsInTheirRatio() {
        Sampled one = LatinHypercube.of("shared").sample(1.5, shares -> 1 + shares[0]);
        Sampled thrice = one.map(x -> 3 * x);
        assertThat(thrice.over(one).band().orElseThrow().low()).isCloseTo(3, within(1e-12));
        assertThat(thrice.over(one).band().orElseThrow().high()).isCloseTo(3, within(1e-12));
        Sampled apart = LatinHypercube.of("apart").sample(1.5, shares -> 1 + shares[0]);
        var band = thrice.over(apart).band().orElseThrow();
        assertThat(band.high() / band.low()).isGreaterThan(2);
    }

    @Test
    void whatHangsOnNoUncertainConstantHasNoBand() {
        assertThat(Sampled.known(2).over(Sampled.known(4)).reading().value()).isEqualTo(0.5);
        assertThat(Sampled.known(2).over(Sampled.known(4)).band()).isEmpty();
    }

    /** A ratio to what may be zero has no finite upper edge, so it has no band rather than an infinite one. */
    @Test
    void ratiosToWhatIsZeroInManySamplesHaveNoBand() {
        Sampled often = LatinHypercube.of("often").sample(1, shares -> shares[0] < 0.2 ? 0 : 1);
        assertThat(Sampled.known(1).over(often).band()).isEmpty();
    }

    private static List<Double> drawn(List<String> names, int constant) {
        List<Double> drawn = new java.util.ArrayList<>();
        LatinHypercube.of(names).sample(0, shares -> {
            drawn.add(shares[constant]);
            return 0;
        });
        return drawn;
    }
}
