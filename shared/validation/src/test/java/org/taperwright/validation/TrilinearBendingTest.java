package org.taperwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.response.FibreBending;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.section.Outline;

/**
 * Sections and rods of a trilinear superelastic alloy by an independent program (reference/bending.json): the
 * moment-curvature of sections about one axis, and rods bent to 45 degrees about it.
 */
class TrilinearBendingTest {
    private static final String SOURCE = "Independent superelastic bending (reference/bending.json)";

    static Stream<JsonNode> sections() {
        return ReferenceFile.cases("bending.json", "moment_curvature");
    }

    static Stream<JsonNode> rods() {
        return ReferenceFile.cases("bending.json", "niti_elastica");
    }

    @ParameterizedTest
    @MethodSource("sections")
    void aSectionCarriesTheReferencesMomentAtEachCurvature(JsonNode row) {
        Outline outline = BladeSections.of(
                        ReferenceDesigns.untwisted(row.get("section").asText(), 0.25, 0.02))
                .outlineAt(0);
        FibreBending fibres = FibreBending.of(
                outline,
                Math.toRadians(row.get("axis_deg").asDouble()),
                alloy(row).tension());
        for (JsonNode point : row.get("rows")) {
            double curvature = point.get(0).asDouble();
            fibres.bend(curvature);
            Findings.hold(
                    SOURCE,
                    name(row) + ", moment over d³ at a curvature of " + curvature + "/d, MPa",
                    point.get(1).asDouble(),
                    fibres.momentAlong(),
                    1e-4,
                    "cubics between exact integrals; the circle is a polygon of 720 sides");
        }
    }

    @ParameterizedTest
    @MethodSource("rods")
    void aRodBentToFortyFiveDegreesCarriesTheReferencesMoment(JsonNode row) {
        Design design = ReferenceDesigns.untwisted(
                row.get("section").asText(),
                row.get("d0").asDouble(),
                row.get("taper").asDouble());
        double moment = BendingTest.momentAboutNmm(
                design,
                alloy(row),
                BladeSections.of(design),
                Math.toRadians(row.get("axis_deg").asDouble()),
                45);
        Findings.hold(
                SOURCE,
                name(row) + ", rod of taper " + row.get("taper").asText() + ": moment at 45°, N·mm",
                row.get("elastica45").get("M_clamp").asDouble(),
                moment,
                1e-3,
                "table of moment and curvature, and steps of the rod over the ends of the plateau");
    }

    private static Alloy alloy(JsonNode row) {
        return ReferenceDesigns.trilinear(row.get("law").asText().equals("sym") ? 1 : 1.3);
    }

    private static String name(JsonNode row) {
        return row.get("section").asText() + " about " + row.get("axis_deg").asText() + "°, "
                + row.get("law").asText();
    }
}
