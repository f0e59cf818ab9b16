package org.taperwright.mechanics.bench.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.alloy.StressCurve;
import org.taperwright.mechanics.alloy.StressCurve.Branch;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.section.Segment;

/** Sections of unit diameter in bending, against closed forms of the handbooks (Timoshenko; from memory, high confidence). */
class FibreBendingTest {
    private static final double YOUNG = 200_000;
    private static final double YIELD = 2_000;
    private static final double WIDTH = 0.9;
    private static final double HEIGHT = 0.4;
    private static final StressCurve LEVEL =
            StressCurve.symmetric(YOUNG, new Branch(new double[] {YIELD / YOUNG}, new double[] {0}));
    private static final StressCurve LOP = new StressCurve(
            YOUNG, new Branch(new double[] {0.01}, new double[] {0}), new Branch(new double[] {0.02}, new double[] {0
            }));

    /** Plastic section modulus of a square of side a about an axis along a side: a^3/4; here a = 1/sqrt 2. */
    @Test
    void aSquareBentFarYieldsAllThroughFlat() {
        FibreBending square = FibreBending.of(square(), 0, LEVEL);
        square.bend(200);
        assertThat(square.momentAlong()).isCloseTo(YIELD * Math.pow(0.5, 1.5) / 4, within(0.01));
    }

    /** About a diagonal: a^3 sqrt 2 / 6. */
    @Test
    void aSquareBentFarYieldsAllThroughOverItsDiagonal() {
        FibreBending square = FibreBending.of(square(), Math.PI / 4, LEVEL);
        square.bend(200);
        assertThat(square.momentAlong()).isCloseTo(YIELD * Math.pow(0.5, 1.5) * Math.sqrt(2) / 6, within(0.01));
    }

    /** Hooke's law: M = E I kappa with I = a^4/12 about every axis. */
    @Test
    void belowYieldTheMomentIsHookes() {
        FibreBending square = FibreBending.of(square(), 0.3, LEVEL);
        square.bend(0.01);
        assertThat(square.momentAlong()).isCloseTo(YOUNG * 0.01 / 48, within(1e-8));
        assertThat(square.momentAcross()).isCloseTo(0, within(1e-8));
    }

    /** Between first yield and all plastic, {@code M = M_y (1.5 - 0.5 (kappa_y / kappa)^2)}, {@code M_y = Y b h^2 / 6}. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1.25, 2, 4})
    void aRectangleYieldsFromItsFacesInwards(double times) {
        FibreBending rectangle = FibreBending.of(rectangle(), 0, LEVEL);
        double first = YIELD * WIDTH * HEIGHT * HEIGHT / 6;
        rectangle.bend(times * YIELD / YOUNG / (HEIGHT / 2));
        double expected = first * (1.5 - 0.5 / (times * times));
        assertThat(rectangle.momentAlong()).isCloseTo(expected, within(1e-5 * expected));
    }

    /** A turning rectangle bends as its two ways of bending do on the mean: 1/I = (1/I1 + 1/I2) / 2 with bh^3/12, hb^3/12. */
    @Test
    void aTurningBladeOfUnequalStiffnessBendsByTheHarmonicMean() {
        double[] answer = new double[2];
        Responses.bending(rectangle(), LEVEL).at(10, answer);
        double across = WIDTH * Math.pow(HEIGHT, 3) / 12;
        double along = HEIGHT * Math.pow(WIDTH, 3) / 12;
        double expected = 10 / YOUNG * (1 / across + 1 / along) / 2;
        assertThat(answer[0]).isCloseTo(expected, within(1e-6 * expected));
    }

    private static Outline rectangle() {
        Point[] corners = {
            new Point(-WIDTH / 2, -HEIGHT / 2),
            new Point(WIDTH / 2, -HEIGHT / 2),
            new Point(WIDTH / 2, HEIGHT / 2),
            new Point(-WIDTH / 2, HEIGHT / 2)
        };
        return new Outline(IntStream.range(0, 4)
                .<Segment>mapToObj(i -> new Segment.Line(corners[i], corners[(i + 1) % 4]))
                .toList());
    }

    /** A flat square of an alloy twice as strong in compression: the side in tension takes two thirds of the height. */
    @Test
    void theNeutralAxisMovesTowardsTheStrongerSide() {
        FibreBending square = FibreBending.of(square(), 0, LOP);
        square.bend(500);
        double a = Math.sqrt(0.5);
        assertThat(square.neutralAxis()).isCloseTo(-a / 6, within(1e-4));
        // two blocks of the force Y a * 2a/3, half the height apart
        assertThat(square.momentAlong()).isCloseTo(2_000 * a * (2 * a / 3) * (a / 2), within(0.05));
    }

    @Test
    void theCurvatureRisesWithTheMomentAndItsSlopeIsThatOfTheCurve() {
        MomentCurvature curve = Responses.bending(
                square(), StressCurve.symmetric(YOUNG, new Branch(new double[] {0.01}, new double[] {5_000})));
        double[] answer = new double[2];
        double last = 0;
        for (double moment = 1; moment < 300; moment += 1) {
            curve.at(moment, answer);
            assertThat(answer[0]).isGreaterThan(last);
            assertThat(answer[1]).isPositive();
            last = answer[0];
            curve.at(-moment, answer);
            assertThat(answer[0]).isEqualTo(-last);
        }
    }

    static Outline square() {
        if (Sections.outline(SectionShape.of("square", Map.of())) instanceof OutlineResult.Drawn drawn) {
            return drawn.outline();
        }
        throw new AssertionError("a square cannot be drawn");
    }
}
