package org.taperwright.mechanics.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LatinHypercubeTest {
    /** McKay, Beckman and Conover 1979: by definition every slice of every constant holds one sample. */
    @Test
    void everySliceOfEveryConstantHoldsOneSample() {
        for (int constant = 0; constant < 3; constant++) {
            int c = constant;
            Set<Integer> slices = new HashSet<>();
            new LatinHypercube(3).band(shares -> {
                slices.add((int) (shares[c] * LatinHypercube.SAMPLES));
                return shares[c];
            });
            assertThat(slices).hasSize(LatinHypercube.SAMPLES);
        }
    }

    @Test
    void theBandOfAnEvenlySpreadConstantIsItsTwentiethAndItsNineteenTwentieths() {
        var band = new LatinHypercube(2).band(shares -> Spread.even(10, 20).at(shares[1]));
        assertThat(band.low()).isCloseTo(10.5, within(0.06));
        assertThat(band.high()).isCloseTo(19.5, within(0.06));
    }
}
