package org.taperwright.shaping.passage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class OvalOverlapTest {
    @Test
    void aCircleInsideTheEllipseHasNothingBeyondIt() {
        assertThat(OvalOverlap.beyond(0.3, 0.8, 0.3)).isZero();
    }

    @Test
    void aCircleAroundTheEllipseExceedsItByTheDifferenceOfAreas() {
        assertThat(OvalOverlap.beyond(1, 0.8, 0.3)).isEqualTo(Math.PI / 4 * (1 - 0.8 * 0.3), within(1e-15));
    }

    @Test
    void aRoundOpeningLeavesARing() {
        assertThat(OvalOverlap.beyond(0.5, 0.3, 0.3)).isEqualTo(Math.PI / 4 * (0.25 - 0.09), within(1e-15));
    }

    @Property(tries = 300)
    void theClosedFormAgreesWithASumOverFineAngles(
            @ForAll @DoubleRange(min = 0.1, max = 1) double circle,
            @ForAll @DoubleRange(min = 0.1, max = 1) double wide,
            @ForAll @DoubleRange(min = 0.2, max = 1) double ratio) {
        double narrow = wide * ratio;
        assertThat(OvalOverlap.beyond(circle, wide, narrow))
                .isEqualTo(sumOverAngles(circle / 2, wide / 2, narrow / 2), within(2e-7));
    }

    /** Midpoint sum of {@code (R² - r(t)²) / 2} over the angles at which the circle lies outside. */
    private static double sumOverAngles(double radius, double a, double b) {
        int n = 20000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double t = 2 * Math.PI * (i + 0.5) / n;
            double polar = 1 / Math.hypot(Math.cos(t) / a, Math.sin(t) / b);
            if (radius > polar) {
                sum += (radius * radius - polar * polar) / 2;
            }
        }
        return sum * 2 * Math.PI / n;
    }
}
