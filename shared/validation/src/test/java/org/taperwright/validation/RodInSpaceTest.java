package org.taperwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.bench.SpaceBending;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

/**
 * A rhombic rod whose principal axes turn with a pitch of 4 mm, bent to 45 degrees in space by an independent program
 * (reference/bending.json, rod_in_space; its residual is below 1e-12). The reference leaves the factor of the flutes'
 * turning out, and so does ours here.
 */
class RodInSpaceTest {
    private static final String SOURCE = "Independent rods in space (reference/bending.json)";
    private static final String REASON =
            "steps of the rod, about 1e-6; the reference's turns begin at the clamp or the tip alike, as 3 mm is no whole pitch";

    static Stream<JsonNode> cases() {
        return ReferenceFile.cases("bending.json", "rod_in_space");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aRodWhoseAxesTurnLeavesThePlaneAsTheReference(JsonNode row) {
        Design design = ReferenceDesigns.of(
                ReferenceDesigns.shape("rhombus07"),
                0.25,
                0.04,
                2 / row.get("pitch").asDouble());
        Alloy alloy = ReferenceDesigns.alloy(193_000, 0.3, 1e9);
        SpaceBending bent = SpaceBending.ofStraightBars(
                design,
                alloy,
                BladeSections.of(design),
                Math.toRadians(row.get("psi0_deg").asDouble()),
                45);
        String where = "rhombus 25/.04, pitch 4 mm, " + row.get("psi0_deg").asInt() + "° in the clamp: ";
        hold(where + "force, N", row.get("F"), bent.forceN());
        hold(where + "arm, mm", row.get("X"), bent.armMm());
        hold(where + "moment at the clamp, N·mm", row.get("M_clamp"), bent.momentNmm());
        Findings.hold(
                SOURCE,
                where + "travel out of the plane, mm",
                row.get("Z").asDouble(),
                bent.asideMm(),
                3e-4,
                "out of the plane a small difference of large ones, which hangs on the torsion constant (1e-4)");
        hold(where + "end slope, °", row.get("end_slope_deg"), bent.endSlopeDeg());
    }

    private static void hold(String quantity, JsonNode expected, double ours) {
        Findings.hold(SOURCE, quantity, expected.asDouble(), ours, 1e-4, REASON);
    }

    @AfterAll
    static void say() {
        Findings.remark(
                SOURCE,
                "Elastic range only; the bending test itself takes the mean over a turn and says so where it is poor.");
    }
}
