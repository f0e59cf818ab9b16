package org.taperwright.mechanics.bench.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.StressCurve;
import org.taperwright.mechanics.alloy.StressCurve.Branch;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.section.Segment;

/** Closed forms of beam theory (Timoshenko, Strength of Materials; Prager and Hodge for the plastic ones). */
class FibreBendingTest {
    private static final double YOUNG = 40_000;
    private static final double YIELD = 400;
    private static final double FIRST = YIELD / YOUNG;
    private static final StressCurve PERFECT =
            StressCurve.symmetric(YOUNG, new Branch(new double[] {FIRST}, new double[] {0}));

    static Outline outline(String family, Map<String, Double> parameters) {
        return ((OutlineResult.Drawn) Sections.outline(SectionShape.of(family, parameters))).outline();
    }

    static Outline circle() {
        return new Outline(List.of(
                new Segment.Arc(new Point(0, 0), 0.5, 0, Math.PI),
                new Segment.Arc(new Point(0, 0), 0.5, Math.PI, 2 * Math.PI)));
    }

    @Test
    void inTheElasticRangeTheMomentIsModulusTimesSecondMomentTimesCurvature() {
        FibreBending square = FibreBending.of(outline("square", Map.of()), 0, PERFECT);
        square.bend(0.005);
        assertThat(square.momentAlong()).isCloseTo(YOUNG / 48 * 0.005, within(1e-9));
        assertThat(square.momentAcross()).isCloseTo(0, within(1e-12));
        assertThat(square.greatestTension(0.005)).isCloseTo(0.005 * Math.sqrt(0.125), within(1e-12));
    }

    /** Sides along the axes: {@code M = M_p (1 - (kappa_y / kappa)^2 / 3)} with {@code M_p = Y a^3 / 4}. */
    @Test
    void aSquareBeyondYieldFollowsTheRectanglesClosedForm() {
        double side = Math.sqrt(0.5);
        FibreBending square = FibreBending.of(outline("square", Map.of()), 0, PERFECT);
        double yieldCurvature = FIRST / (side / 2);
        for (double times : new double[] {1.2, 2, 5, 30}) {
            square.bend(times * yieldCurvature);
            double expected = YIELD * side * side * side / 4 * (1 - 1 / (3 * times * times));
            assertThat(square.momentAlong()).isCloseTo(expected, within(1e-6 * expected));
        }
    }

    @Test
    void aCircleTendsToItsFullyPlasticMoment() {
        FibreBending fibres = FibreBending.of(circle(), 0.3, PERFECT);
        fibres.bend(2000 * FIRST);
        assertThat(fibres.momentAlong()).isCloseTo(YIELD / 6, within(1e-4 * YIELD / 6));
    }

    /** Yield in compression a times that in tension: fully plastic, the neutral axis leaves a share a/(1+a) in tension. */
    @Test
    void theNeutralAxisMovesTowardsTheSideThatIsStronger() {
        double asymmetry = 1.4;
        StressCurve uneven = new StressCurve(
                YOUNG,
                new Branch(new double[] {FIRST}, new double[] {0}),
                new Branch(new double[] {asymmetry * FIRST}, new double[] {0}));
        double side = Math.sqrt(0.5);
        FibreBending square = FibreBending.of(outline("square", Map.of()), 0, uneven);
        square.bend(20_000 * FIRST);
        double inTension = asymmetry / (1 + asymmetry);
        assertThat(square.neutralAxis()).isCloseTo(side * (0.5 - inTension), within(1e-4));
        double expected = YIELD * side * side * side * inTension / 2;
        assertThat(square.momentAlong()).isCloseTo(expected, within(1e-3 * expected));
    }

    /** In the elastic range the mean over a turn is the harmonic mean of the principal second moments. */
    @Test
    void overATurnOfTheFlutesTheCompliancesOfThePrincipalAxesAreAveraged() {
        double q = 0.6;
        MomentCurvature mean = Responses.bending(
                outline("rhombus", Map.of("shortDiagonal", q)), StressCurve.symmetric(YOUNG, Branch.elastic()));
        double most = q / 48;
        double least = q * q * q / 48;
        double[] answer = new double[2];
        mean.at(3, answer);
        double expected = 3 / YOUNG * (1 / most + 1 / least) / 2;
        assertThat(answer[0]).isCloseTo(expected, within(1e-9 * expected));
        mean.at(-3, answer);
        assertThat(answer[0]).isCloseTo(-expected, within(1e-9 * expected));
    }
}
