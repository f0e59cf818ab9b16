package org.taperwright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.work.Fault;

/** Closed forms of chords, arcs and tangent circles. */
class LandsAndRoundingTest {
    private static double area(SectionShape shape) {
        return Outlines.area(Drawn.shape(shape).segments());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.05, 0.2})
    void aSquareWithLandsIsFourChordsAndFourArcs(double width) {
        double land = width / 0.5;
        double expected = 4 * 0.125 * Math.sin(Math.PI / 2 - land) + 4 * 0.125 * land;
        // the bisection for the circle leaves 1e-7 of the width
        assertThat(area(Drawn.withLand("square", width))).isCloseTo(expected, within(1e-7));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.01, 0.04})
    void aRoundedSquareLosesTheCornersAndIsScaledBackToTheCircle(double radius) {
        double sharp = 0.5 - (4 - Math.PI) * radius * radius;
        double reach = (Math.sqrt(0.5) / 2 - radius) * Math.sqrt(2) + radius;
        assertThat(area(Drawn.withRounding("square", radius)))
                .isCloseTo(sharp * Math.pow(0.5 / reach, 2), within(1e-12));
    }

    @Test
    void roundingIsTangentToStraightAndCurvedSides() {
        for (String family : List.of("triangle", "double-s", "scalloped", "square")) {
            Outline outline = Drawn.shape(Drawn.withRounding(family, 0.02));
            Walk walk = new Walk(outline.segments());
            long kinks = java.util.stream.IntStream.range(0, outline.segments().size())
                    .filter(i -> Math.abs(walk.turnAtEnd(i)) > 1e-6)
                    .count();
            long sides = family.equals("double-s") ? 2 : 0;
            assertThat(kinks).as(family).isEqualTo(sides);
        }
    }

    @Test
    void aLandAndARoundingGoTogether() {
        Outline outline = Drawn.shape(new SectionShape("triangle", Map.of(), 0.01, 0.1, List.of()));
        assertThat(outline.segments()).hasSize(12);
        assertThat(Sections.edges(outline, Hand.CLOCKWISE))
                .hasSize(3)
                .allSatisfy(edge -> assertThat(edge.landWidth()).isBetween(0.08, 0.1));
    }

    @Test
    void landsThatWouldMeetAreRefused() {
        double[] twelve = new double[24];
        for (int i = 0; i < 12; i++) {
            twelve[2 * i] = Math.cos(i * Math.PI / 6);
            twelve[2 * i + 1] = Math.sin(i * Math.PI / 6);
        }
        List<Point> points = Drawn.custom(twelve).points();
        assertThat(Drawn.faults(new SectionShape("custom", Map.of(), 0, 0.3, points)))
                .singleElement()
                .satisfies(fault -> assertThat(fault.sentence())
                        .isEqualTo("landWidth: a land of 0.3 d cannot be ground: before that width the lands of"
                                + " neighbouring edges meet; a narrower land, or 0 for none"));
    }

    @Test
    void landsWiderThanAskedForAreLeftWithARemark() {
        SectionShape shape = Drawn.withLand("scalloped", 0.05);
        assertThat(Drawn.shape(shape)).isEqualTo(Drawn.family("scalloped"));
        assertThat(Drawn.remarks(shape))
                .extracting(Fault::what)
                .containsExactly("the section's own lands are wider than 0.05 d");
    }

    @Test
    void aRadiusThatDoesNotFitOnALandIsRefused() {
        assertThat(Drawn.faults(new SectionShape("triangle", Map.of(), 0.05, 0.01, List.of())))
                .extracting(Fault::where)
                .containsExactly("edgeRounding");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 0.0001, 0.4, Double.NaN, Double.POSITIVE_INFINITY})
    void landAndRoundingHaveTheirLimits(double value) {
        assertThat(Drawn.faults(Drawn.withLand("square", value)))
                .extracting(Fault::where)
                .contains("landWidth");
        assertThat(Drawn.faults(Drawn.withRounding("square", value)))
                .extracting(Fault::where)
                .contains("edgeRounding");
    }

    @Test
    void aTeardropRoundedUntilItsEdgeIsClearOfTheCircleIsRefused() {
        assertThat(Drawn.faults(Drawn.withRounding("teardrop", 0.02)))
                .extracting(Fault::what)
                .containsExactly(
                        "a radius of 0.02 d leaves the cutting edges too blunt, or clear of the circle on which the"
                                + " back rides");
        assertThat(Sections.edges(Drawn.shape(Drawn.withRounding("teardrop", 0.01)), Hand.CLOCKWISE))
                .hasSize(1);
    }

    @Test
    void aBroadLandOnATeardropSaysThatItsBackBecomesAnEdge() {
        SectionShape shape = Drawn.withLand("teardrop", 0.1);
        assertThat(Drawn.remarks(shape))
                .extracting(Fault::what)
                .containsExactly("the land also runs along the back of the section, which then counts as an edge");
        assertThat(Sections.edges(Drawn.shape(shape), Hand.CLOCKWISE)).hasSize(2);
    }

    @Test
    void aFilletKeepsTheCornersThatStickOut() {
        // Polygonal flutes: every second corner of a six-pointed star reaches in.
        double[] star = new double[24];
        for (int i = 0; i < 12; i++) {
            Point point = Point.polar(i % 2 == 0 ? 1 : 0.6, i * Math.PI / 6);
            star[2 * i] = point.x();
            star[2 * i + 1] = point.y();
        }
        Outline sharp = Drawn.shape(Drawn.custom(star));
        Outline filleted = Outlines.filletReentrant(sharp, 0.03);
        assertThat(Corners.reentrant(sharp.segments())).hasSize(6);
        assertThat(filleted.segments()).hasSize(18);
        assertThat(Outlines.area(filleted.segments())).isGreaterThan(Outlines.area(sharp.segments()));
        assertThat(Sections.edges(filleted, Hand.CLOCKWISE)).hasSize(6);
        assertThat(Outlines.circumscribedRadius(filleted.segments())).isCloseTo(0.5, within(1e-15));
    }

    @Test
    void aFilletTooLargeForItsSidesIsHalvedUntilItFits() {
        Outline plus = Drawn.shape(
                Drawn.custom(4, -1, 4, 1, 1, 1, 1, 4, -1, 4, -1, 1, -4, 1, -4, -1, -1, -1, -1, -4, 1, -4, 1, -1));
        Outline filleted = Outlines.filletReentrant(plus, 3);
        assertThat(filleted.segments()).hasSize(16);
        OutlineSoundness.check(new OutlineResult.Drawn(filleted, List.of()));
    }
}
