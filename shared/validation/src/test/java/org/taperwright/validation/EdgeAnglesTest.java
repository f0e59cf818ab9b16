package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;

/**
 * Angles at the cutting edges of straight-sided sections: plane geometry, and the angles usually quoted for them
 * (reference/published.json, "rake": -180°/n).
 */
class EdgeAnglesTest {
    private static final String SOURCE = "Edge angles of regular polygons (plane geometry)";
    private static final String EXACT = "straight sides: chord and face are one line, only rounding is left";

    @ParameterizedTest
    @CsvSource({"triangle, 3", "square, 4"})
    void wedgeRakeAndClearanceAreThoseOfTheCorner(String family, int n) {
        for (Hand hand : Hand.values()) {
            List<Edge> edges = edges(family, hand);
            assertThat(edges).hasSize(n);
            Edge edge = edges.get(0);
            String place = family + ", " + hand.word() + ": ";
            Findings.hold(SOURCE, place + "wedge, °", 180 - 360.0 / n, edge.wedgeDeg(), 1e-12, EXACT);
            Findings.hold(SOURCE, place + "rake, °", 180.0 / n - 90, edge.rakeDeg(), 1e-12, EXACT);
            Findings.hold(SOURCE, place + "clearance, °", 180.0 / n, edge.clearanceDeg(), 1e-12, EXACT);
        }
    }

    @Test
    void theAnglesUsuallyQuotedAreMeasuredFromTheTangent() {
        JsonNode quoted = ReferenceFile.published("rake");
        for (String family : List.of("triangle", "square")) {
            Edge edge = edges(family, Hand.CLOCKWISE).get(0);
            Findings.hold(
                    SOURCE,
                    family + ": angle from face to tangent, with the quoted sign, °",
                    quoted.get(family).asDouble(),
                    -(90 + edge.rakeDeg()),
                    1e-12,
                    EXACT);
        }
        Findings.remark(
                SOURCE,
                "The rake quoted for the triangle, -60°, is the angle between its face and the circle's tangent. Rake here is"
                        + " measured from the radius, for all sections alike: -30° for the triangle (half its wedge of 60°),"
                        + " -45° for the square, where both readings agree. Only so do rake, wedge and clearance add up to"
                        + " 90° and does the rake approach -90° as the polygon approaches a circle.");
    }

    private static List<Edge> edges(String family, Hand hand) {
        return Sections.edges(
                ((OutlineResult.Drawn) Sections.outline(SectionShape.of(family, Map.of()))).outline(), hand);
    }
}
