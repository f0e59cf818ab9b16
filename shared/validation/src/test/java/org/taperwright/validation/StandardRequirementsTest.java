package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import java.util.StringJoiner;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.StandardLimits;
import org.taperwright.mechanics.bench.TwistingResult;
import org.taperwright.mechanics.bench.TwistingTest;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

/** K-type files against ISO 3630-1:1992 / ANSI/ADA 28 (from memory, medium confidence). */
class StandardRequirementsTest {
    @ParameterizedTest
    @ValueSource(ints = {15, 20, 25, 30, 35, 40})
    void theLimitsAreThoseOfTheTable(int size) {
        JsonNode row = ReferenceFile.published("req-K-" + size);
        Design file = file("square", size);
        assertThat(StandardLimits.greatestBendingMoment(file).orElseThrow().valueNmm())
                .isCloseTo(row.get("bend45_max_Nmm").asDouble(), within(0.01));
        assertThat(StandardLimits.leastTorque(file).orElseThrow().valueNmm())
                .isCloseTo(row.get("torque_min_Nmm").asDouble(), within(0.01));
        assertThat(StandardLimits.leastAngleDeg(file).orElseThrow())
                .isEqualTo(row.get("angle_min_deg").asDouble());
    }

    /** The fully plastic torque of a square steel file reaches the least torque asked of every size of the table. */
    @ParameterizedTest
    @ValueSource(ints = {15, 20, 25, 30, 35, 40})
    void aSquareSteelFileBearsTheTorqueThatTheStandardAsks(int size) {
        Design file = file("square", size);
        TwistingResult result =
                TwistingTest.run(file, Alloys.find("stainless-steel").orElseThrow(), BladeSections.of(file));
        assertThat(result.plasticTorqueNmm())
                .isGreaterThan(result.limit().orElseThrow().valueNmm());
    }

    /**
     * Camps and Pertot, Int Endod J 1995;28:239 (abstract read): NiTi K-type files of sizes 15 to 40 are far below the
     * greatest moment; Hooke's law, which overstates theirs, is below it already.
     */
    @ParameterizedTest
    @ValueSource(ints = {15, 20, 25, 30, 35, 40})
    void aNickelTitaniumFileBendsFarMoreEasilyThanTheStandardAsks(int size) {
        Design file = file("square", size);
        BendingResult result =
                BendingTest.run(file, Alloys.find("niti-superelastic").orElseThrow(), BladeSections.of(file));
        assertThat(result.momentNmm())
                .isLessThan(0.5 * result.limit().orElseThrow().valueNmm());
    }

    /**
     * Torque and angle at fracture beside the least that the table asks. The constants of fracture are not fitted to it,
     * so both outcomes are noted; asserted is only that the torque lies within the order of the table.
     */
    @ParameterizedTest
    @CsvSource({
        "square, stainless-steel",
        "triangle, stainless-steel",
        "square, niti-superelastic",
        "square, niti-martensitic"
    })
    void fractureIsSetBesideTheTableWithItsDisagreements(String section, String alloyId) {
        Alloy alloy = Alloys.find(alloyId).orElseThrow();
        StringJoiner rows = new StringJoiner("; ");
        for (int size : new int[] {15, 20, 25, 30, 35, 40}) {
            Design file = file(section, size);
            TwistingResult result = TwistingTest.run(file, alloy, BladeSections.of(file));
            double asked = result.limit().orElseThrow().valueNmm();
            double angle = StandardLimits.leastAngleDeg(file).orElseThrow();
            assertThat(result.fractureTorqueNmm()).isBetween(asked / 3, asked * 3);
            assertThat(result.weakestLevelMm()).isEqualTo(TwistingTest.HELD_MM);
            rows.add(String.format(
                    Locale.ROOT,
                    "size %d: %.2f N·mm of %.2f (%s), %.0f° of %.0f° (%s)",
                    size,
                    result.fractureTorqueNmm(),
                    asked,
                    result.fractureTorqueNmm() >= asked ? "met" : "not met",
                    result.fractureAngleDeg(),
                    angle,
                    result.fractureAngleDeg() >= angle ? "met" : "not met"));
        }
        Findings.remark(
                "ISO 3630-1:1992 / ANSI/ADA 28, K-type files (from memory, medium confidence)",
                "Fracture in twisting, " + section + ", " + alloy.label() + " (ours, of the least asked): " + rows
                        + ". The angle hangs on the shear strain at fracture, known with low confidence (0.6 to 1.5 for "
                        + "stainless steel); it is not fitted.");
    }

    private static Design file(String section, int size) {
        return ReferenceDesigns.of(ReferenceDesigns.shape(section), size / 100.0, 0.02, 1);
    }
}
