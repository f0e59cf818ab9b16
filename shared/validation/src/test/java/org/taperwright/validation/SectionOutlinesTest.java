package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Outlines;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.section.Segment;

/**
 * The outlines that the families draw, held against the independently drawn outlines of reference/sections.json: area,
 * core, and points of each on the other.
 */
class SectionOutlinesTest {
    private static final String SOURCE = "Independent section outlines (reference/sections.json)";
    private static final String EXACT = "lines and arcs are exact; only rounding is left";

    private static final Map<String, SectionShape> SHAPES = Map.of(
            "rect12", SectionShape.of("offset-rectangle", Map.of("sideRatio", 0.5, "offset", 0.0)),
            "square", SectionShape.of("square", Map.of()),
            "triangle", SectionShape.of("triangle", Map.of()),
            "convex_triangle", SectionShape.of("triangle", Map.of("sagitta", 0.06)),
            "rhombus07", SectionShape.of("rhombus", Map.of("shortDiagonal", 0.7)),
            "teardrop", SectionShape.of("teardrop", Map.of("coreDiameter", 0.6)),
            "u_flute", SectionShape.of("scalloped", Map.of("flutes", 3.0, "coreDiameter", 0.36, "landAngleDeg", 18.0)));

    @TestFactory
    Stream<DynamicTest> familiesDrawTheReferenceOutlines() {
        return SHAPES.keySet().stream()
                .sorted()
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    JsonNode expected =
                            ReferenceFile.read("sections.json").get("sections").get(name);
                    hold(name, expected, outline(SHAPES.get(name)));
                }));
    }

    @Test
    void aFilletedPlusIsThePlusWithItsReentrantCornersFilled() {
        JsonNode expected = ReferenceFile.read("sections.json").get("sections").get("plus_fillet");
        double arm = Math.sqrt(0.25 - 0.15 * 0.15);
        List<Point> quarter = List.of(new Point(arm, -0.15), new Point(arm, 0.15), new Point(0.15, 0.15));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            for (Point point : quarter) {
                points.add(point.turned(i * Math.PI / 2));
            }
        }
        Outline plus = outline(new SectionShape("custom", Map.of(), 0, 0, points));
        hold("plus_fillet", expected, Outlines.filletReentrant(plus, 0.05));
    }

    @Test
    void anEllipseOfManyPointsComesNearTheReferenceEllipse() {
        JsonNode expected = ReferenceFile.read("sections.json").get("sections").get("ellipse06");
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            double t = i * 2 * Math.PI / 2000;
            points.add(new Point(5 * Math.cos(t), 3 * Math.sin(t)));
        }
        Outline ellipse = outline(new SectionShape("custom", Map.of(), 0, 0, points));
        String chords = "2000 chords fall short of the curve by (pi/2000)^2 * 2/3";
        Findings.hold(
                SOURCE,
                "ellipse06, 2000 points: area, d²",
                expected.get("A").asDouble(),
                Outlines.area(ellipse.segments()),
                2e-6,
                chords);
    }

    private static void hold(String name, JsonNode expected, Outline ours) {
        Findings.hold(
                SOURCE,
                name + ": area, d²",
                expected.get("A").asDouble(),
                Outlines.area(ours.segments()),
                1e-12,
                EXACT);
        Findings.hold(
                SOURCE,
                name + ": core diameter, d",
                expected.get("core_d_on_axis").asDouble(),
                2 * Outlines.coreRadius(ours),
                1e-12,
                EXACT);
        assertThat(worst(theirs(expected), ours))
                .as("their points from our outline")
                .isLessThan(1e-12);
        assertThat(worst(ours, theirs(expected)))
                .as("our points from their outline")
                .isLessThan(1e-12);
    }

    private static Outline outline(SectionShape shape) {
        OutlineResult result = Sections.outline(shape);
        assertThat(result).isInstanceOf(OutlineResult.Drawn.class);
        return ((OutlineResult.Drawn) result).outline();
    }

    private static double worst(Outline points, Outline outline) {
        return points.segments().stream()
                .flatMap(segment -> Stream.of(0.0, 0.13, 0.5, 0.77).map(segment::at))
                .mapToDouble(point -> Outlines.distance(outline, point))
                .max()
                .orElseThrow();
    }

    private static Outline theirs(JsonNode section) {
        List<Segment> result = new ArrayList<>();
        for (JsonNode piece : section.get("outline_ccw")) {
            result.add(
                    piece.get("kind").asText().equals("line")
                            ? new Segment.Line(point(piece.get("p0")), point(piece.get("p1")))
                            : new Segment.Arc(
                                    point(piece.get("centre")),
                                    piece.get("radius").asDouble(),
                                    piece.get("theta0").asDouble(),
                                    piece.get("theta1").asDouble()));
        }
        return new Outline(result);
    }

    private static Point point(JsonNode pair) {
        return new Point(pair.get(0).asDouble(), pair.get(1).asDouble());
    }
}
