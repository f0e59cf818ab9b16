package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class LogAxisTest {
    @Test
    void twice_and_half_stand_equally_far_from_the_datum() {
        LogAxis axis = LogAxis.of(DoubleStream.of(0.5, 2));

        assertThat(axis.share(2) - axis.share(1)).isCloseTo(axis.share(1) - axis.share(0.5), within(1e-12));
    }

    @Test
    void every_ratio_stands_inside() {
        LogAxis axis = LogAxis.of(DoubleStream.of(0.03, 1, 7));

        assertThat(DoubleStream.of(0.03, 1, 7).map(axis::share).boxed()).allMatch(share -> share > 0 && share < 1);
    }

    @Test
    void ratios_near_one_still_leave_room_about_it() {
        LogAxis axis = LogAxis.of(DoubleStream.of(1, 1.001));

        assertThat(axis.low()).isLessThan(1 / 1.3);
        assertThat(axis.high()).isGreaterThan(1.3);
    }

    @Test
    void ticks_hold_one_and_do_not_crowd() {
        LogAxis axis = LogAxis.of(DoubleStream.of(0.2, 1.6));

        List<Double> ticks = axis.ticks(300, 40);

        assertThat(ticks)
                .contains(1.0)
                .hasSizeBetween(2, 8)
                .allMatch(tick -> tick >= axis.low() && tick <= axis.high());
        for (double a : ticks) {
            for (double b : ticks) {
                assertThat(a == b || Math.abs(axis.share(a) - axis.share(b)) * 300 >= 40)
                        .isTrue();
            }
        }
    }
}
