package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.alloy.Fracture;
import org.taperwright.mechanics.bench.StandardLimits;
import org.taperwright.mechanics.bench.TwistingResult;
import org.taperwright.mechanics.bench.TwistingTest;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.quantity.Band;

/**
 * Torque and angle at fracture of K-type files beside the least ones of ISO 3630-1:1992 / ANSI/ADA 28 (from memory, medium
 * confidence). The constants of fracture come from wire, not from these limits, so files may fall short of them here; the
 * page shows where.
 */
class FractureRequirementsTest {
    private static final String SOURCE = "ISO 3630-1:1992 / ANSI/ADA 28, fracture in twisting (from memory, medium)";
    private static final List<Integer> SIZES = List.of(15, 20, 25, 30, 35, 40);
    private static final List<String> ALLOYS = List.of("stainless-steel", "niti-superelastic", "niti-martensitic");

    private record Row(String text, boolean torqueHolds, boolean angleHolds) {}

    @Test
    void torqueAndAngleStandBesideTheLeastOnesAndShortfallsAreLeftIn() {
        List<Row> rows = new ArrayList<>();
        for (String alloy : ALLOYS) {
            for (String section : List.of("square", "triangle")) {
                SIZES.forEach(size -> rows.add(row(alloy, section, size)));
            }
        }
        StringBuilder table = new StringBuilder(
                "| alloy | section | size | torque at fracture, N·mm | at least | angle, ° | at least |\n"
                        + "| --- | --- | ---: | ---: | ---: | ---: | ---: |\n");
        rows.forEach(row -> table.append(row.text()));
        long shortTorque = rows.stream().filter(row -> !row.torqueHolds()).count();
        long shortAngle = rows.stream().filter(row -> !row.angleHolds()).count();
        Findings.remark(
                SOURCE,
                table + "\nA disagreement left in: of " + rows.size() + " files " + shortTorque
                        + " fall short of the torque and " + shortAngle
                        + " of the angle (marked <). The shear strength is that of wire (0.6 to 0.75 of the tensile strength"
                        + " of steel; strength over √3 for NiTi) and the shear strain at fracture is known with low"
                        + " confidence; neither was fitted to the standard. Camps and Pertot (Int Endod J 1995;28:239, abstract"
                        + " read) measured NiTi files that reach the torque in nearly all sizes, so ours lie low. Not in it:"
                        + " diameters up to 0.02 mm over the nominal one (20 % more torque at size 25), corners that are"
                        + " fuller than the sharp ones here, and what twisting does to the flutes themselves.");
        assertThat(rows).hasSize(ALLOYS.size() * 2 * SIZES.size());
        assertThat(rows.stream().filter(row -> row.text().startsWith("| Stainless steel | square")))
                .as("square steel files bear the torque")
                .allMatch(Row::torqueHolds);
    }

    private static Row row(String alloyId, String section, int size) {
        Design file = ReferenceDesigns.of(ReferenceDesigns.shape(section), size / 100.0, 0.02, 1);
        Alloy alloy = Alloys.find(alloyId).orElseThrow();
        TwistingResult result = TwistingTest.run(file, alloy, BladeSections.of(file));
        double least = result.limit().orElseThrow().valueNmm();
        double angle = StandardLimits.leastAngleDeg(file).orElseThrow();
        boolean bears = result.fractureTorqueNmm() >= least;
        boolean turns = result.fractureAngleDeg() >= angle;
        String text = String.format(
                Locale.ROOT,
                "| %s | %s | %d | %s%.2f | %.2f | %s%.0f | %.0f |%n",
                alloy.label(),
                section,
                size,
                bears ? "" : "< ",
                result.fractureTorqueNmm(),
                least,
                turns ? "" : "< ",
                result.fractureAngleDeg(),
                angle);
        return new Row(text, bears, turns);
    }

    /** The constants are those of the published bands: middle of 0.6 to 0.75 of the strength; strength over √3. */
    @Test
    void theShearStrengthsAreThoseOfTheWire() {
        for (String id : List.of("stainless-steel", "carbon-steel")) {
            Alloy steel = Alloys.find(id).orElseThrow();
            Band share = new Band(
                    ReferenceFile.published("ss-yield")
                            .get("shear_ultimate_over_UTS")
                            .get(0)
                            .asDouble(),
                    ReferenceFile.published("ss-yield")
                            .get("shear_ultimate_over_UTS")
                            .get(1)
                            .asDouble());
            assertThat(steel.constant(Fracture.SHEAR_STRENGTH.name()) / steel.ultimateMpa())
                    .isBetween(share.low(), share.high());
        }
        for (String key : List.of("conventional", "heat_treated")) {
            Alloy niti = Alloys.find(key.equals("conventional") ? "niti-superelastic" : "niti-martensitic")
                    .orElseThrow();
            assertThat(Math.sqrt(3) * niti.constant(Fracture.SHEAR_STRENGTH.name()))
                    .isBetween(
                            ReferenceFile.published("niti-ht-plateau")
                                    .get("UTS_" + key)
                                    .get(0)
                                    .asDouble(),
                            ReferenceFile.published("niti-ht-plateau")
                                    .get("UTS_" + key)
                                    .get(1)
                                    .asDouble());
        }
    }

    /** Bench papers, order of magnitude only: sizes 20 to 30 of taper .04 to .06 break at 0.4 to 1.5 N·cm. */
    @Test
    void nickelTitaniumOfGreaterTaperBreaksAtTheTorquesOfBenchPapers() {
        double low = ReferenceFile.published("torque-niti").get(0).asDouble() * 10;
        double high = ReferenceFile.published("torque-niti").get(1).asDouble() * 10;
        Alloy niti = Alloys.find("niti-superelastic").orElseThrow();
        for (double tip : new double[] {0.20, 0.25, 0.30}) {
            for (double taper : new double[] {0.04, 0.06}) {
                Design file = ReferenceDesigns.of(ReferenceDesigns.shape("convex_triangle"), tip, taper, 0.5);
                assertThat(TwistingTest.run(file, niti, BladeSections.of(file)).fractureTorqueNmm())
                        .as("tip %s taper %s", tip, taper)
                        .isBetween(0.5 * low, 2 * high);
            }
        }
    }
}
