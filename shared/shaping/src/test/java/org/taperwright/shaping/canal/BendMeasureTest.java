package org.taperwright.shaping.canal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class BendMeasureTest {
    /** Plane geometry: the chord of an arc stands at half the arc's angle. */
    @Test
    void anArcToTheEndHasHalfItsAngleBySchneider() {
        BendMeasure measure = BendMeasure.of(List.of(new CanalPiece(4, 0, 0), new CanalPiece(8, 40, 120)))
                .orElseThrow();
        assertThat(measure.schneiderDeg()).isEqualTo(20, within(1e-10));
        assertThat(measure.pruettDeg()).isEqualTo(40, within(1e-10));
        assertThat(measure.startMm()).isEqualTo(4);
        assertThat(measure.radiusMm()).isEqualTo(8 / Math.toRadians(40), within(1e-12));
    }

    @Test
    void aStraightCanalHasNoBendToMeasure() {
        assertThat(BendMeasure.of(List.of(new CanalPiece(12, 0, 0)))).isEmpty();
    }

    @Property(tries = 300)
    void whatIsMadeOfMeasuresIsMeasuredSo(
            @ForAll @DoubleRange(min = 1, max = 75) double angle,
            @ForAll @DoubleRange(min = 2, max = 6) double radius) {
        BendMeasure made = BendMeasure.of(
                        BendMeasure.pieces(14, 5, angle, radius).orElseThrow())
                .orElseThrow();
        assertThat(made.pruettDeg()).isEqualTo(angle, within(1e-9));
        assertThat(made.radiusMm()).isEqualTo(radius, within(1e-9));
        BendMeasure back = BendMeasure.of(BendMeasure.piecesBySchneider(14, 5, made.schneiderDeg(), radius)
                        .orElseThrow())
                .orElseThrow();
        assertThat(back.pruettDeg()).isEqualTo(angle, within(1e-7));
    }

    @Test
    void measuresThatDoNotFitTheLengthGiveNoCanal() {
        assertThat(BendMeasure.pieces(12, 6, 90, 8)).isEmpty();
        assertThat(BendMeasure.piecesBySchneider(12, 6, 80, 8)).isEmpty();
    }
}
