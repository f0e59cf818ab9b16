package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.SmallBending;
import org.taperwright.mechanics.bench.TwistingResult;
import org.taperwright.mechanics.bench.TwistingTest;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

/**
 * Rods bent and twisted by an independent program (reference/bending.json, linear cases; its own residuals are below
 * 1e-13). Ours differ by the discrete steps of the rod, about 1e-7, and in twisting by the torsion constant, 1e-4.
 */
class IndependentRodTest {
    private static final String SOURCE = "Independent rods (reference/bending.json)";
    private static final double BENDING = 1e-6;
    private static final double TWISTING = 1e-4;
    private static final double PEAK = 0.01;

    /** The case bent about its stiffer axis alone is no blade that turns, and the circle is no family: left out. */
    static Stream<JsonNode> bending() {
        return ReferenceFile.cases("bending.json", "linear_elastic")
                .filter(row -> row.get("I_mode").asText().equals("avg"))
                .filter(row -> !row.get("section").asText().equals("circle"));
    }

    static Stream<JsonNode> twisting() {
        return ReferenceFile.cases("bending.json", "twisting");
    }

    @ParameterizedTest
    @MethodSource("bending")
    void aRodBentToFortyFiveDegreesCarriesTheReferencesMoment(JsonNode row) {
        Design design = design(row);
        BendingResult result = BendingTest.run(design, elastic(row), BladeSections.of(design));
        JsonNode expected = row.get("elastica45");
        hold(row, "moment at 45°, N·mm", expected.get("M_clamp"), result.momentNmm(), BENDING);
        hold(row, "force at 45°, N", expected.get("F"), result.forceN(), BENDING);
        hold(row, "end slope at 45°, °", expected.get("end_slope_deg"), result.endSlopeDeg(), BENDING);
    }

    @ParameterizedTest
    @MethodSource("bending")
    void aRodBentToTwentyFiveDegreesCarriesTheReferencesMoment(JsonNode row) {
        Design design = design(row);
        double moment = BendingTest.momentNmm(design, elastic(row), BladeSections.of(design), 25);
        hold(row, "moment at 25°, N·mm", row.get("elastica25").get("M_clamp"), moment, BENDING);
    }

    @ParameterizedTest
    @MethodSource("bending")
    void aRodBentALittleHasTheReferencesSlopesAndDeflection(JsonNode row) {
        Design design = design(row);
        SmallBending small = SmallBending.of(design, alloy(row), BladeSections.of(design));
        hold(row, "slope per moment, rad/(N·mm)", row.get("slope_per_moment"), small.slopePerMoment(), BENDING);
        hold(row, "slope per force, rad/N", row.get("slope_per_force"), small.slopePerForce(), BENDING);
        hold(row, "deflection per force, mm/N", row.get("defl_per_force"), small.deflectionPerForce(), BENDING);
    }

    @ParameterizedTest
    @MethodSource("twisting")
    void aTwistedRodTurnsAsTheReferenceSays(JsonNode row) {
        Design design = design(row);
        BladeSections sections = BladeSections.of(design);
        hold(
                row,
                "twist of the blade per torque, rad/(N·mm)",
                row.get("twist_rad_per_Nmm_3_16"),
                TwistingTest.twistRadPerNmm(design, alloy(row), sections, 3, 16),
                TWISTING);
        hold(
                row,
                "twist of the shaft per torque, rad/(N·mm)",
                row.get("twist_rad_per_Nmm_16_20_shaft"),
                TwistingTest.twistRadPerNmm(design, alloy(row), sections, 16, 20),
                BENDING);
    }

    /** Peak shear is asked to 1 %, the fully plastic torque to 1e-4. */
    @ParameterizedTest
    @MethodSource("twisting")
    void aTwistedRodYieldsAtTheReferencesTorques(JsonNode row) {
        Design design = design(row);
        Alloy alloy = alloy(row);
        TwistingResult result = TwistingTest.run(design, alloy, BladeSections.of(design));
        assertThat(result.weakestLevelMm()).isCloseTo(3, within(1e-6));
        hold(
                row,
                "fully plastic torque over shear yield, mm³",
                row.get("Tp_over_k"),
                result.plasticTorqueNmm() / alloy.shearYieldMpa(),
                TWISTING);
        hold(
                row,
                "peak shear per torque at 3 mm, 1/mm³",
                row.get("tau_max_per_T_at_3mm"),
                alloy.shearYieldMpa() / result.yieldTorqueNmm(),
                PEAK);
    }

    private static Design design(JsonNode row) {
        return ReferenceDesigns.untwisted(
                row.get("section").asText(),
                row.get("d0").asDouble(),
                row.get("taper").asDouble());
    }

    /** Never yields. */
    private static Alloy elastic(JsonNode row) {
        return ReferenceDesigns.alloy(row.get("E").asDouble(), 0.3, 1e9);
    }

    private static Alloy alloy(JsonNode row) {
        return ReferenceDesigns.alloy(row.get("E").asDouble(), row.path("nu").asDouble(0.3), 1000);
    }

    private static void hold(JsonNode row, String quantity, JsonNode expected, double ours, double tolerance) {
        String rod = row.get("section").asText() + " "
                + Math.round(100 * row.get("d0").asDouble()) + "/"
                + row.get("taper").asText().substring(1);
        String reason = tolerance == BENDING
                ? "steps of the rod, about 1e-7"
                : tolerance == TWISTING ? "torsion constant and sand heap to 1e-4" : "peak shear to 1 %";
        Findings.hold(SOURCE, rod + ": " + quantity, expected.asDouble(), ours, tolerance, reason);
    }
}
