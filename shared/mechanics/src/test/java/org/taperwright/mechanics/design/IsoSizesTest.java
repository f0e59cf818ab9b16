package org.taperwright.mechanics.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** ISO 3630-1:1992, from memory with high confidence; the whole table is held against the published values elsewhere. */
class IsoSizesTest {
    @Test
    void theSeriesHasTwentyOneSizes() {
        assertThat(IsoSizes.sizes())
                .hasSize(21)
                .startsWith(6, 8, 10, 15)
                .endsWith(60, 70, 80, 90, 100, 110, 120, 130, 140);
    }

    @Test
    void coloursRepeatEverySixSizesFromFifteenOn() {
        assertThat(IsoSizes.colour(15)).contains(SizeColour.WHITE);
        assertThat(IsoSizes.colour(45)).contains(SizeColour.WHITE);
        assertThat(IsoSizes.colour(90)).contains(SizeColour.WHITE);
        assertThat(IsoSizes.colour(40)).contains(SizeColour.BLACK);
    }

    @Test
    void aNumberBetweenSizesIsNone() {
        assertThat(IsoSizes.colour(12)).isEmpty();
        assertThat(IsoSizes.find(65)).isEmpty();
    }

    @Test
    void aTipDiameterFindsItsSize() {
        assertThat(IsoSizes.ofTip(0.25)).map(IsoSize::text).contains("25");
        assertThat(IsoSizes.ofTip(0.06)).map(IsoSize::text).contains("06");
        assertThat(IsoSizes.ofTip(0.27)).isEmpty();
    }

    @Test
    void diametersFollowTheStandardTaper() {
        IsoSize size = IsoSizes.find(25).orElseThrow();
        assertThat(size.d0Mm()).isEqualTo(0.25);
        assertThat(size.d1Mm()).isEqualTo(0.27);
        assertThat(size.d3Mm()).isEqualTo(0.31);
        assertThat(size.d16Mm()).isEqualTo(0.57);
    }
}
