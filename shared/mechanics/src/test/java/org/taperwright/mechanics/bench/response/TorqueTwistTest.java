package org.taperwright.mechanics.bench.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.alloy.StressCurve;
import org.taperwright.mechanics.alloy.StressCurve.Branch;
import org.taperwright.mechanics.properties.SectionAnalysis;
import org.taperwright.mechanics.properties.SectionProperties;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.section.Segment;

/** Torque against twist at its ends, by Saint-Venant and Nadai, and a circle between (Timoshenko; from memory, high). */
class TorqueTwistTest {
    private static final double SHEAR = 75_000;
    private static final double YIELD = 1_000;
    private static final StressCurve LEVEL =
            StressCurve.symmetric(SHEAR, new Branch(new double[] {YIELD / SHEAR}, new double[] {0}));

    private final SectionProperties square = SectionAnalysis.of(FibreBendingTest.square());

    /** J = 0.140577 a^4 with a^2 = 1/2. */
    @Test
    void aSquareStartsWithItsTorsionConstant() {
        TorqueTwist twist = TorqueTwist.of(square, LEVEL, 1);
        assertThat(twist.torque(1e-3)).isCloseTo(SHEAR * 0.140577 / 4 * 1e-3, within(1e-3));
    }

    /** Sand heap: k a^3 / 3. */
    @Test
    void aSquareEndsFullyPlastic() {
        TorqueTwist twist = TorqueTwist.of(square, LEVEL, 100);
        double full = YIELD * Math.pow(0.5, 1.5) / 3;
        assertThat(twist.fractureTorque()).isCloseTo(full, within(full * 2e-3));
    }

    /** T = (2 pi k R^3 / 3)(1 - (theta_y / theta)^3 / 4) with R = 1/2; the section's own peak is good to 1e-4. */
    @Test
    void aCircleFollowsItsClosedFormInBetween() {
        SectionProperties circle = SectionAnalysis.of(new Outline(List.of(
                new Segment.Arc(new Point(0, 0), 0.5, 0, Math.PI),
                new Segment.Arc(new Point(0, 0), 0.5, Math.PI, 2 * Math.PI))));
        TorqueTwist twist = TorqueTwist.of(circle, LEVEL, 1);
        for (double ratio : new double[] {1.2, 2, 5}) {
            double theta = ratio * YIELD / SHEAR / 0.5;
            double expected = 2 * Math.PI * YIELD / 24 * (1 - Math.pow(ratio, -3) / 4);
            assertThat(twist.torque(theta)).isCloseTo(expected, within(expected * 1e-4));
        }
    }

    @Test
    void theTwistRisesWithTheTorqueUpToFracture() {
        TorqueTwist twist = TorqueTwist.of(square, LEVEL, 1);
        double last = 0;
        for (int i = 1; i <= 100; i++) {
            double here = twist.twist(twist.fractureTorque() * i / 100);
            assertThat(here).isFinite().isGreaterThan(last);
            last = here;
        }
    }

    /** The elastic-plastic stress function of a square: highest under the sand heap (obstacle problem, differences). */
    @ParameterizedTest
    @ValueSource(doubles = {1.1, 1.5, 2, 3})
    void aSquareLiesWithinOnePerCentOfTheObstacleProblem(double times) {
        double side = Math.sqrt(0.5);
        double yieldTwist = (YIELD / SHEAR) / (0.675_314 * side);
        TorqueTwist bar = TorqueTwist.of(square, LEVEL, 1);
        double expected = YIELD * side * side * side * obstacle(times / 0.675_314);
        assertThat(bar.torque(times * yieldTwist)).isCloseTo(expected, within(0.01 * expected));
    }

    /** Torque of a unit square, unit yield, at a twist times modulus: {@code -lap phi = 2 theta}, {@code phi <= distance}. */
    private static double obstacle(double twist) {
        int n = 80;
        double h = 1.0 / n;
        double[][] phi = new double[n + 1][n + 1];
        double over = 2 / (1 + Math.sin(Math.PI * h));
        for (int sweep = 0; sweep < 400; sweep++) {
            for (int i = 1; i < n; i++) {
                for (int j = 1; j < n; j++) {
                    double around = phi[i + 1][j] + phi[i - 1][j] + phi[i][j + 1] + phi[i][j - 1];
                    double free = phi[i][j] + over * ((around + 2 * twist * h * h) / 4 - phi[i][j]);
                    phi[i][j] = Math.min(free, h * Math.min(Math.min(i, n - i), Math.min(j, n - j)));
                }
            }
        }
        double sum = 0;
        for (double[] row : phi) {
            for (double value : row) {
                sum += value;
            }
        }
        return 2 * sum * h * h;
    }

    @ParameterizedTest
    @ValueSource(strings = {"square", "triangle", "scalloped", "rhombus", "teardrop", "double-s"})
    void theTorqueRisesEverMoreSlowly(String family) {
        SectionProperties section = SectionAnalysis.of(
                ((OutlineResult.Drawn) Sections.outline(SectionShape.of(family, Map.of()))).outline());
        TorqueTwist bar = TorqueTwist.of(section, LEVEL, 1);
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 200; i++) {
            double rise = bar.torque((i + 1) * 1e-3) - bar.torque(i * 1e-3);
            assertThat(rise).isBetween(0.0, last + 1e-9);
            last = rise;
        }
    }
}
