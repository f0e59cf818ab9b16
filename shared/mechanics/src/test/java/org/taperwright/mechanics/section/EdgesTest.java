package org.taperwright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Closed forms: plane geometry of polygons and circles. */
class EdgesTest {
    private static final double EXACT = 1e-9;

    private static List<Edge> clockwise(Outline outline) {
        return Sections.edges(outline, Hand.CLOCKWISE);
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 6, 8, 10})
    void aRegularPolygonHasTheAnglesOfItsCorners(int n) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            points.add(Point.polar(3, 0.3 + i * 2 * Math.PI / n));
        }
        List<Edge> edges = clockwise(Drawn.shape(Drawn.custom(points)));
        assertThat(edges).hasSize(n).allSatisfy(edge -> {
            assertThat(edge.wedgeDeg()).isCloseTo(180 - 360.0 / n, within(EXACT));
            assertThat(edge.rakeDeg()).isCloseTo(180.0 / n - 90, within(EXACT));
            assertThat(edge.clearanceDeg()).isCloseTo(180.0 / n, within(EXACT));
            assertThat(edge.landWidth()).isZero();
        });
    }

    @ParameterizedTest
    @CsvSource({"triangle, -30", "square, -45"})
    void theStandardSectionsHaveTheirRakeAtEveryEdge(String family, double rake) {
        assertThat(clockwise(Drawn.family(family)))
                .allSatisfy(edge -> assertThat(edge.rakeDeg()).isCloseTo(rake, within(EXACT)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.5, 0.7, 0.9})
    void aRhombusCutsAtItsLongDiagonalWithItsHalfAngle(double shortDiagonal) {
        List<Edge> edges = clockwise(Drawn.family("rhombus", Map.of("shortDiagonal", shortDiagonal)));
        double half = Math.toDegrees(Math.atan(shortDiagonal));
        assertThat(edges).hasSize(2).allSatisfy(edge -> {
            assertThat(edge.rakeDeg()).isCloseTo(-half, within(EXACT));
            assertThat(edge.wedgeDeg()).isCloseTo(2 * half, within(EXACT));
            assertThat(edge.clearanceDeg()).isCloseTo(90 - half, within(EXACT));
        });
        assertThat(edges.get(0).at()).isEqualTo(new Point(0.5, 0));
    }

    @Test
    void aTeardropCutsOnceWithHalfItsWedgeOnEachSideOfTheRadius() {
        List<Edge> edges = clockwise(Drawn.family("teardrop", Map.of("coreDiameter", 0.6)));
        assertThat(edges).singleElement().satisfies(edge -> {
            assertThat(edge.angle()).isZero();
            assertThat(edge.rakeDeg()).isCloseTo(-Math.toDegrees(Math.asin(0.3 / 0.7)), within(EXACT));
        });
    }

    @ParameterizedTest
    @EnumSource(Hand.class)
    void scallopsLeaveOneEdgeToEachLandOfTheAngleAskedFor(Hand hand) {
        Outline outline = Drawn.family("scalloped", Map.of("flutes", 3.0, "coreDiameter", 0.36, "landAngleDeg", 18.0));
        double half = Math.toRadians(9);
        double lead = hand == Hand.CLOCKWISE ? -half : half;
        List<Edge> edges = Sections.edges(outline, hand);
        assertThat(edges).hasSize(3).allSatisfy(edge -> {
            assertThat(edge.landWidth()).isCloseTo(0.5 * Math.toRadians(18), within(EXACT));
            assertThat(edge.clearanceDeg()).isZero();
            assertThat(edge.wedgeDeg() + edge.rakeDeg()).isCloseTo(90, within(EXACT));
        });
        assertThat(Angles.positive(edges.get(0).angle())).isCloseTo(Math.PI / 6 + lead, within(EXACT));
    }

    @Test
    void aHollowBeforeTheEdgeMakesTheRakePositive() {
        double base = rake(0);
        double hollow = rake(0.12);
        assertThat(base).isNegative();
        assertThat(hollow).isPositive();
    }

    private static double rake(double inwardSagitta) {
        return Sections.edges(
                        Drawn.family("double-s", Map.of("outwardSagitta", 0.05, "inwardSagitta", inwardSagitta)),
                        Hand.CLOCKWISE)
                .get(0)
                .rakeDeg();
    }

    @Test
    void turningTheOtherWayMeetsTheOtherFaceFirst() {
        Outline outline = Drawn.family("double-s", Map.of("outwardSagitta", 0.05, "inwardSagitta", 0.1));
        Edge clockwise = clockwise(outline).get(0);
        Edge anticlockwise = Sections.edges(outline, Hand.ANTICLOCKWISE).get(0);
        assertThat(anticlockwise.at().distanceTo(clockwise.at())).isLessThan(EXACT);
        assertThat(anticlockwise.rakeDeg()).isCloseTo(clockwise.clearanceDeg() - 90, within(EXACT));
        assertThat(anticlockwise.rakeDeg() + anticlockwise.wedgeDeg() + anticlockwise.clearanceDeg())
                .isCloseTo(90, within(EXACT));
        assertThat(anticlockwise.wedgeDeg()).isCloseTo(clockwise.wedgeDeg(), within(EXACT));
    }

    @Test
    void aRoundBarOfManyPointsHasNoEdge() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            points.add(Point.polar(1, i * Math.PI / 200));
        }
        assertThat(clockwise(Drawn.shape(Drawn.custom(points)))).isEmpty();
    }

    @Test
    void aCornerTracedByManyPointsIsOneEdge() {
        Outline rounded = Drawn.shape(Drawn.withRounding("square", 0.01));
        Outline traced = Drawn.shape(Drawn.custom(Outlines.flattened(rounded, 1e-6)));
        assertThat(traced.segments()).hasSizeGreaterThan(60);
        assertThat(clockwise(traced))
                .hasSize(4)
                .allSatisfy(edge -> assertThat(edge.rakeDeg())
                        .isCloseTo(clockwise(rounded).get(0).rakeDeg(), within(1.0)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.005, 0.02, 0.1})
    void aMarginGivesEveryEdgeTheLandAskedFor(double width) {
        for (String family : List.of("triangle", "square", "rhombus", "double-s", "offset-rectangle")) {
            Outline outline = Drawn.shape(Drawn.withLand(family, width));
            List<Edge> before = clockwise(Drawn.family(family));
            List<Edge> after = clockwise(outline);
            assertThat(after).as(family).hasSameSizeAs(before).allSatisfy(edge -> {
                assertThat(edge.landWidth()).isCloseTo(width, within(1e-6));
                assertThat(edge.clearanceDeg()).isZero();
            });
        }
    }
}
