package org.taperwright.mechanics.bench.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.StressCurve;
import org.taperwright.mechanics.alloy.StressCurve.Branch;
import org.taperwright.mechanics.properties.SectionAnalysis;
import org.taperwright.mechanics.properties.SectionProperties;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Point;
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
}
