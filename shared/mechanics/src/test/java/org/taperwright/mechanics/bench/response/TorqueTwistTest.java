package org.taperwright.mechanics.bench.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.alloy.StressCurve;
import org.taperwright.mechanics.alloy.StressCurve.Branch;
import org.taperwright.mechanics.properties.SectionAnalysis;
import org.taperwright.mechanics.properties.SectionProperties;

class TorqueTwistTest {
    private static final double MODULUS = 20_000;
    private static final double YIELD = 200;
    private static final double FIRST = YIELD / MODULUS;
    private static final StressCurve PERFECT =
            StressCurve.symmetric(MODULUS, new Branch(new double[] {FIRST}, new double[] {0}));

    /** Nadai: {@code T = T_p (1 - 1 / (4 x^3))}, {@code T_p = 2/3 pi k R^3}. */
    @ParameterizedTest
    @ValueSource(doubles = {1.05, 1.5, 3, 20})
    void aRoundBarFollowsTheClosedForm(double times) {
        SectionProperties circle = SectionAnalysis.of(FibreBendingTest.circle());
        TorqueTwist bar = TorqueTwist.of(circle, PERFECT, 100 * FIRST);
        double expected = YIELD * Math.PI / 12 * (1 - 1 / (4 * times * times * times));
        assertThat(bar.torque(times * FIRST / 0.5)).isCloseTo(expected, within(1e-3 * expected));
    }

    /** The elastic-plastic stress function of a square: highest under the sand heap (obstacle problem, differences). */
    @ParameterizedTest
    @ValueSource(doubles = {1.1, 1.5, 2, 3})
    void aSquareLiesWithinOnePerCentOfTheObstacleProblem(double times) {
        SectionProperties square = SectionAnalysis.of(FibreBendingTest.outline("square", Map.of()));
        double side = Math.sqrt(0.5);
        double yieldTwist = FIRST / (0.675_314 * side);
        TorqueTwist bar = TorqueTwist.of(square, PERFECT, 100 * FIRST);
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
    void theElasticStiffnessAndTheFullyPlasticTorqueAreThoseOfTheSection(String family) {
        SectionProperties section = SectionAnalysis.of(FibreBendingTest.outline(family, Map.of()));
        TorqueTwist bar = TorqueTwist.of(section, PERFECT, 5_000 * FIRST);
        double elastic = 1e-3;
        assertThat(bar.torque(elastic))
                .isCloseTo(MODULUS * section.torsionConstant() * elastic, within(1e-9 * MODULUS));
        assertThat(bar.fractureTorque())
                .isCloseTo(YIELD * section.plasticTorque(), within(1e-3 * YIELD * section.plasticTorque()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"square", "triangle", "scalloped", "rhombus", "teardrop", "double-s"})
    void theTorqueRisesEverMoreSlowly(String family) {
        SectionProperties section = SectionAnalysis.of(FibreBendingTest.outline(family, Map.of()));
        TorqueTwist bar = TorqueTwist.of(section, PERFECT, 100 * FIRST);
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 200; i++) {
            double rise = bar.torque((i + 1) * 1e-3) - bar.torque(i * 1e-3);
            assertThat(rise).isBetween(0.0, last + 1e-9);
            last = rise;
        }
    }

    @Test
    void theTwistUndoesTheTorque() {
        SectionProperties square = SectionAnalysis.of(FibreBendingTest.outline("square", Map.of()));
        TorqueTwist bar = TorqueTwist.of(square, PERFECT, 60 * FIRST);
        for (double twist : new double[] {0.005, 0.02, 0.05, 0.2}) {
            assertThat(bar.twist(bar.torque(twist))).isCloseTo(twist, within(5e-3 * twist));
        }
    }
}
