package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.bench.FatigueResult;
import org.taperwright.mechanics.bench.FatigueTest;
import org.taperwright.mechanics.bench.Tube;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;

/** Turning in curved tubes against published exponents, ratios and directions; cycle counts were not recovered. */
class TubeFatigueTest {
    private static final String SOURCE = "Fatigue in curved tubes (published exponents, ratios and directions)";
    private static final Alloy NITI = Alloys.find("niti-superelastic").orElseThrow();

    private static Design file(double tip, double taper) {
        return ReferenceDesigns.of(ReferenceDesigns.shape("convex_triangle"), tip, taper, 0.5);
    }

    private static FatigueResult turned(Alloy alloy, Tube tube, Motion motion) {
        return FatigueTest.run(file(0.25, 0.04), alloy, tube, motion, 300);
    }

    private static double exponent(Alloy alloy) {
        double slow = FatigueTest.cycles(alloy, Motion.ROTATION, 0.02).value();
        double fast = FatigueTest.cycles(alloy, Motion.ROTATION, 0.04).value();
        return Math.log(2) / Math.log(fast / slow);
    }

    /** Cheung and Darvell, Int Endod J 2007 (abstract read to -0.40, -0.56 from memory, medium). */
    @Test
    void theExponentLiesInThePublishedRange() {
        JsonNode range = ReferenceFile.published("cd07").get("range");
        for (String id : new String[] {"niti-superelastic", "niti-r-phase", "niti-martensitic"}) {
            assertThat(exponent(Alloys.find(id).orElseThrow()))
                    .isBetween(range.get(0).asDouble(), range.get(1).asDouble());
        }
        Findings.remark(
                SOURCE,
                String.format(
                        Locale.ROOT,
                        "Exponent of NiTi: ours %.2f, published -0.56 to -0.40. The constant is taken from there, so this"
                                + " shows that it arrives, not that it is right.",
                        exponent(NITI)));
    }

    /** Tobushi and others, J Eng Mater Technol 1998;120:64 (abstract read). */
    @Test
    void strainsOfTheMartensiteRangeLastBelowAHundredThousandCyclesAndSmallOnesOverTenMillion() {
        for (double strain : new double[] {0.006, 0.01, 0.02, 0.04}) {
            assertThat(FatigueTest.cycles(NITI, Motion.ROTATION, strain).value())
                    .isLessThan(1e5);
        }
        assertThat(FatigueTest.cycles(NITI, Motion.ROTATION, 0.003).value()).isGreaterThanOrEqualTo(1e7);
    }

    /** Pruett, Clement and Carnes, J Endod 1997;23:77 (abstract read): directions. */
    @Test
    void theDirectionsOfTheFirstTubeTestsComeOut() {
        double wide =
                turned(NITI, new Tube(45, 5, 0.1, 5), Motion.ROTATION).cycles().value();
        double tight =
                turned(NITI, new Tube(45, 2, 0.1, 5), Motion.ROTATION).cycles().value();
        assertThat(tight).isLessThan(wide);
        double thirty =
                turned(NITI, new Tube(30, 2, 0.1, 5), Motion.ROTATION).cycles().value();
        double sixty =
                turned(NITI, new Tube(60, 2, 0.1, 5), Motion.ROTATION).cycles().value();
        assertThat(sixty).isLessThan(thirty);
        FatigueResult thin = FatigueTest.run(file(0.30, 0.02), NITI, Tube.USUAL, Motion.ROTATION, 300);
        FatigueResult thick = FatigueTest.run(file(0.40, 0.02), NITI, Tube.USUAL, Motion.ROTATION, 300);
        assertThat(thick.cycles().value()).isLessThan(thin.cycles().value());
        double slow = FatigueTest.run(file(0.3, 0.04), NITI, Tube.USUAL, Motion.ROTATION, 750)
                .cycles()
                .value();
        double quick = FatigueTest.run(file(0.3, 0.04), NITI, Tube.USUAL, Motion.ROTATION, 2000)
                .cycles()
                .value();
        assertThat(quick).isEqualTo(slow);
        Findings.remark(
                SOURCE,
                String.format(
                        Locale.ROOT,
                        "Tighter radius, thicker shaft and an angle above 30° shorten life and speed does not matter"
                                + " (Pruett and others 1997, abstract read): all four come out; of the angle the reason here is"
                                + " that a short arc is not reached in full. Fracture was seen at the middle of the curve; here"
                                + " it lies %.1f mm from the tip when the middle stands at 5 mm, because the blade thickens"
                                + " upwards.",
                        turned(NITI, Tube.USUAL, Motion.ROTATION).levelMm()));
        assertThat(turned(NITI, Tube.USUAL, Motion.ROTATION).levelMm()).isBetween(4.0, 6.5);
    }

    /** Shen and others, J Endod 2011 (abstract read): size 25 of taper .04, 35 and 45 degrees. */
    @Test
    void heatTreatedFilesLastThreeToEightTimesAsLong() {
        JsonNode range = ReferenceFile.published("ht-gain");
        Alloy treated = Alloys.find("niti-martensitic").orElseThrow();
        for (double angle : new double[] {35, 45}) {
            Tube tube = new Tube(angle, 5, 0.1, 5);
            double ratio = turned(treated, tube, Motion.ROTATION).cycles().value()
                    / turned(NITI, tube, Motion.ROTATION).cycles().value();
            assertThat(ratio).isBetween(range.get(0).asDouble(), range.get(1).asDouble());
        }
        Findings.remark(
                SOURCE,
                "Heat-treated against conventional NiTi: 4.9 times the cycles (published 3 to 8, the source of the constant)."
                        + " That the ratio is the same at all strains is an assumption.");
    }

    /** Martins and others, Materials 2026;19:387 (read): 241 to 422 % more. */
    @Test
    void reciprocationLastsLongerThanRotation() {
        double gain = turned(NITI, Tube.USUAL, Motion.RECIPROCATION).cycles().value()
                / turned(NITI, Tube.USUAL, Motion.ROTATION).cycles().value();
        JsonNode range = ReferenceFile.published("recip-martins");
        assertThat(100 * (gain - 1))
                .isBetween(range.get(0).asDouble(), range.get(1).asDouble());
    }

    /** Shape Mem Superelasticity 2019 (abstract read): 0.1 to 0.3 % more strain at ten million cycles. */
    @Test
    void rPhaseBearsMoreStrain() {
        Alloy rPhase = Alloys.find("niti-r-phase").orElseThrow();
        double more = 100 * (rPhase.constant("enduranceStrain") - NITI.constant("enduranceStrain"));
        assertThat(more).isBetween(0.1, 0.3);
        assertThat(turned(rPhase, Tube.USUAL, Motion.ROTATION).cycles().value())
                .isGreaterThan(
                        turned(NITI, Tube.USUAL, Motion.ROTATION).cycles().value());
    }

    /** Common practice, no source: steel files turned by motor in a curve do not last; NiTi's band holds hundreds. */
    @Test
    void steelBreaksSoonerThanNickelTitanium() {
        Alloy steel = Alloys.find("stainless-steel").orElseThrow();
        FatigueResult niti = turned(NITI, Tube.USUAL, Motion.ROTATION);
        assertThat(turned(steel, Tube.USUAL, Motion.ROTATION).cycles().value())
                .isLessThan(niti.cycles().value() / 3);
        Findings.remark(
                SOURCE,
                String.format(
                        Locale.ROOT,
                        "A conventional NiTi file 25/.04 in 60° of 5 mm radius: %.0f cycles, band %.0f to %.0f. Bench papers"
                                + " report hundreds for such files (from memory, low confidence); laboratories differ widely"
                                + " (Hülsmann and others 2019, abstract read: temperature alone by up to 500 %%).",
                        niti.cycles().value(),
                        niti.cycles().band().orElseThrow().low(),
                        niti.cycles().band().orElseThrow().high()));
        assertThat(niti.cycles().value()).isBetween(100.0, 3000.0);
    }
}
