package org.taperwright.shaping.passage.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.shaping.sequence.SetAngles;

class StrokePlanTest {
    @Test
    void anInstrumentGoesDownByEqualPartsThenStaysAtDepth() {
        assertThat(StrokePlan.USUAL.depthsMm(9, 12, 5)).containsExactly(10.0, 11.0, 12.0, 12.0, 12.0);
        assertThat(StrokePlan.USUAL.depthsMm(12, 12, 3)).containsExactly(12.0, 12.0, 12.0);
        assertThat(StrokePlan.USUAL.depthsMm(6, 12, 2)).containsExactly(9.0, 12.0);
    }

    @Property(tries = 300)
    void depthsNeverRiseAndEndAtTheTarget(
            @ForAll @DoubleRange(min = 0, max = 20) double bind,
            @ForAll @DoubleRange(min = 0.1, max = 20) double target,
            @ForAll @IntRange(min = 1, max = 40) int strokes) {
        List<Double> depths = StrokePlan.USUAL.depthsMm(bind, target, strokes);
        assertThat(depths).hasSize(strokes).isSorted();
        assertThat(depths.get(strokes - 1)).isEqualTo(target);
    }

    @Test
    void feedIsWhatAStrokeAdvancesForEachTurn() {
        Movement movement = Movement.turned(300, 1);
        assertThat(StrokePlan.USUAL.feedPerTurnMm(9, 12, 5, movement)).isEqualTo(0.2, within(1e-12));
    }

    /** 150 degrees forward and 30 back make 120 degrees of net turning out of 180 travelled. */
    @Test
    void motionsDifferInTurnsThatCutAndTurnsThatBend() {
        Movement even = Movement.of(Motion.RECIPROCATION, 300, 1, new SetAngles(90, 60));
        assertThat(even.cuttingTurns()).isEqualTo(3, within(1e-12));
        assertThat(even.bendingTurns()).isEqualTo(1, within(1e-12));
        Movement back = Movement.of(Motion.RECIPROCATION, 300, 1, SetAngles.USUAL);
        assertThat(back.cuttingTurns()).isEqualTo(5 * 150.0 / 180, within(1e-12));
        assertThat(back.bendingTurns()).isEqualTo(5 * 120.0 / 180, within(1e-12));
        assertThat(Movement.of(Motion.ROTATION, 300, 2, SetAngles.USUAL).bendingTurns())
                .isEqualTo(10, within(1e-12));
        assertThat(Movement.of(Motion.FILING, 300, 1, SetAngles.USUAL).bendingTurns())
                .isZero();
        assertThat(Movement.of(Motion.FILING, 300, 1, SetAngles.USUAL).slideMm())
                .isPositive();
        assertThat(Movement.of(Motion.REAMING, 900, 1, SetAngles.USUAL).cuttingTurns())
                .isEqualTo(1, within(1e-12));
    }
}
