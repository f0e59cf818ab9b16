package org.taperwright.shaping.passage.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.mechanics.work.WorkCancelled;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.passage.stroke.SequenceShaping;
import org.taperwright.shaping.sequence.ArrangedSequence;

class ShapingBandsTest {
    private static final ArrangedSequence CURVED =
            Given.arranged(curved(), 22, List.of(Given.rotary(20, 0.02), Given.hand(140, 0.02)));

    private static ShapingBands bands(ArrangedSequence arranged, Progress progress) {
        return ShapingBands.of(PreparedSequence.of(arranged), SequenceShaping.of(arranged, Progress.NONE), progress);
    }

    private static BandedQuantity quantity(ShapingBands bands, String name) {
        return bands.quantities().stream()
                .filter(banded -> banded.quantity().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** What drives which is what a separate prototype of the method found: torque by energy of cutting, transportation by wear. */
    @Test
    void eachBandHoldsItsValueAndNamesWhatDrivesIt() {
        ShapingBands bands = bands(CURVED, Progress.NONE);
        assertThat(bands.quantities())
                .allSatisfy(banded -> assertThat(banded.band())
                        .hasValueSatisfying(band -> assertThat(banded.value()).isBetween(band.low(), band.high())));
        assertThat(strongest(bands, "torqueNmm")).isEqualTo("shaping.cutting");
        assertThat(strongest(bands, "transportedMm.1")).isEqualTo("shaping.wear");
        assertThat(strongest(bands, "lifeSpent")).isEqualTo("life.steel.point");
        BandedQuantity reserve = quantity(bands, "torsionalReserve");
        assertThat(reserve.strongest().orElseThrow().rank()).isNegative();
    }

    /** The step that cannot enter has no numbers, so no bands. */
    @Test
    void aStepThatCannotBeMadeHasNoBands() {
        assertThat(bands(CURVED, Progress.NONE).quantities())
                .noneMatch(banded -> banded.quantity().step().equals(Optional.of(1)));
    }

    /**
     * In a straight tube nothing is bent, so strain and life spent are nought in every sample, and the volume is that of the cone
     * whatever the wear.
     */
    @Test
    void inAStraightTubeTheVolumeIsKnown() {
        ShapingBands bands = bands(Given.arranged(Given.tube(0.3), 22, List.of(Given.blunt(20, 0.04))), Progress.NONE);
        BandedQuantity volume = quantity(bands, "volumeMm3");
        Band band = volume.band().orElseThrow();
        assertThat(band.high() - band.low()).isLessThan(5e-3 * volume.value());
        assertThat(quantity(bands, "greatestStrain").band().orElseThrow().high())
                .isEqualTo(0, within(1e-12));
    }

    @Test
    void theNumbersOfTheWallHaveBandsTooWhereTheyAreAskedFor() {
        PreparedSequence prepared = PreparedSequence.of(CURVED);
        ShapingBands bands = ShapingBands.of(
                prepared,
                SequenceShaping.of(CURVED, Progress.NONE),
                WallQuantities.of(2),
                LatinHypercube.SAMPLES,
                Progress.NONE);
        String moved = WallQuantities.in(Third.APICAL, WallQuantities.TRANSPORTED);
        assertThat(strongest(bands, moved)).isEqualTo("shaping.wear");
        assertThat(bands.quantities())
                .extracting(banded -> banded.quantity().name())
                .contains("removedMm3.middle", "touchedShare", "transportedMm.apical")
                .doesNotContain("torqueNmm", "leastDentineMm");
    }

    @Test
    void theSameSequenceHasTheSameBandsAgain() {
        ArrangedSequence one = Given.arranged(curved(), 22, List.of(Given.rotary(20, 0.02)));
        List<Optional<Band>> first = bands(one, Progress.NONE).quantities().stream()
                .map(BandedQuantity::band)
                .toList();
        assertThat(bands(one, Progress.NONE).quantities().stream().map(BandedQuantity::band))
                .containsExactlyElementsOf(first);
    }

    @Test
    void bandsThatAreNoLongerWantedStop() {
        Progress stop = new Progress() {
            private double done;

            @Override
            public void at(double fraction, String what) {
                done = fraction;
            }

            @Override
            public boolean cancelled() {
                return done > 0.02;
            }
        };
        assertThatThrownBy(() -> bands(CURVED, stop)).isInstanceOf(WorkCancelled.class);
    }

    private static String strongest(ShapingBands bands, String name) {
        return quantity(bands, name).strongest().orElseThrow().input().name();
    }

    private static Canal curved() {
        return new Canal(
                "curved",
                List.of(new CanalPiece(9, 0, 0), new CanalPiece(5, 40, 0), new CanalPiece(2, 0, 0)),
                List.of(new Opening(0, 0.9, 0.9, 0), new Opening(16, 0.16, 0.16, 0)),
                List.of(),
                6,
                22,
                "",
                "");
    }
}
