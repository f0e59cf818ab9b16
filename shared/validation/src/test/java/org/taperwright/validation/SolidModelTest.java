package org.taperwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.SmallBending;
import org.taperwright.mechanics.bench.TwistingTest;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.section.Hand;

/**
 * Tapering blades as three-dimensional solids (reference/solid.json, elastic cases) beside rods with helical factors. The
 * solid's rigid end beyond 16 mm is a thick shaft here, in the large deflections as stiff as the solid's stub.
 */
class SolidModelTest {
    private static final String SOURCE = "Independent solid models (reference/solid.json)";
    private static final String REASON =
            "what is wanted of a rod beside a solid; the solid itself is known to 0.1-0.4 %";
    private static final double TOLERANCE = 0.01;
    private static final double RIGID_MM = 10;

    static Stream<JsonNode> linear() {
        return ReferenceFile.cases("solid.json", "linear");
    }

    static Stream<JsonNode> large() {
        return ReferenceFile.cases("solid.json", "large_deflection")
                .filter(row -> row.get("law").asText().equals("linear elastic"));
    }

    @ParameterizedTest
    @MethodSource("linear")
    void aBladeBentALittleBendsAsTheSolid(JsonNode row) {
        Design design = design(row, RIGID_MM);
        SmallBending small = SmallBending.of(design, alloy(), BladeSections.of(design));
        JsonNode solid = row.get("solid");
        hold(row, "slope per moment, rad/(N·mm)", solid.get("slope_M"), small.slopePerMoment());
        hold(row, "slope per force, rad/N", solid.get("slope_F"), small.slopePerForce());
        hold(row, "deflection per force, mm/N", solid.get("defl_F"), small.deflectionPerForce());
    }

    @ParameterizedTest
    @MethodSource("linear")
    void aTwistedBladeTurnsAsTheSolid(JsonNode row) {
        Design design = design(row, RIGID_MM);
        double twist = TwistingTest.twistRadPerNmm(design, alloy(), BladeSections.of(design), 3, 16);
        hold(row, "twist per torque, rad/(N·mm)", row.get("solid").get("twist_T"), twist);
    }

    @ParameterizedTest
    @MethodSource("large")
    void aBladeBentFarCarriesTheSolidsMoment(JsonNode row) {
        BladeSections ends = BladeSections.of(design(row, RIGID_MM));
        double end = row.get("d0").asDouble() + 16 * row.get("taper").asDouble();
        double stub = end * Math.pow(300 * ends.at(16).iMean() / (Math.PI / 64), 0.25);
        Design design = design(row, stub);
        double chord = row.get("solid").get("chord_deg").asDouble();
        double moment = BendingTest.momentNmm(design, alloy(), BladeSections.of(design), chord);
        hold(
                row,
                "moment at " + Math.round(10 * chord) / 10.0 + "°, N·mm",
                row.get("solid").get("M"),
                moment);
    }

    private static void hold(JsonNode row, String quantity, JsonNode expected, double ours) {
        double pitch = row.get("pitch").asDouble();
        String bar = row.get("section").asText() + ", " + (pitch == 0 ? "straight" : "pitch " + pitch + " mm") + ", "
                + row.get("nodes").asInt() + " nodes: ";
        Findings.hold(SOURCE, bar + quantity, expected.asDouble(), ours, TOLERANCE, REASON);
    }

    private static Alloy alloy() {
        return ReferenceDesigns.alloy(193_000, 0.3, 1e9);
    }

    private static Design design(JsonNode row, double shaftMm) {
        String section = row.get("section").asText();
        double pitch = row.get("pitch").asDouble();
        int edges = section.equals("square") ? 4 : 3;
        return new Design(
                "reference",
                "",
                row.get("d0").asDouble(),
                List.of(new TaperSegment(0, 16, row.get("taper").asDouble())),
                OptionalDouble.of(shaftMm),
                25,
                List.of(new SectionStation(0, ReferenceDesigns.shape(section))),
                List.of(new FluteStation(0, pitch == 0 ? 0 : edges / pitch)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, 75),
                "stainless-steel",
                Making.GROUND,
                Motion.FILING);
    }
}
