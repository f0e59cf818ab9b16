package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.fatigue.Fatigue;
import org.taperwright.mechanics.fatigue.StrainLife;
import org.taperwright.mechanics.fatigue.StrainLives;
import org.taperwright.mechanics.fatigue.Tube;

/**
 * Turning in a tube against published tests. Ratios and exponents are those the laws are built from, so they show that the
 * laws carry them unchanged through the reckoning; cycles of whole instruments were not recovered and are not checked.
 */
class FatigueStudiesTest {
    private static final Alloy NITI = alloy("niti-superelastic");
    private static final String WIDE = "within the published span: half its width about its middle";

    private static Alloy alloy(String id) {
        return Alloys.find(id).orElseThrow();
    }

    private static double cycles(String alloy, Motion motion) {
        Design design = Designs.with(ReferenceDesigns.of(ReferenceDesigns.shape("triangle"), 0.25, 0.04, 0.5))
                .motion(motion)
                .design();
        return Fatigue.in(Tube.USUAL, design, alloy(alloy), Fatigue.USUAL_RPM).cycles();
    }

    private static void within(String source, String quantity, JsonNode span, double ours) {
        double low = span.get(0).asDouble();
        double high = span.get(1).asDouble();
        Findings.hold(source, quantity, (low + high) / 2, ours, (high - low) / (low + high), WIDE);
    }

    @Test
    void theExponentIsThatOfInstrumentsInWater() {
        StrainLife law = StrainLives.of(NITI);
        double slope = Math.log(2) / Math.log(law.cycles(0.02) / law.cycles(0.04));
        JsonNode range = ReferenceFile.published("cd07").get("range");
        Findings.hold(
                "Cheung and Darvell 2007",
                "strain-life exponent of conventional nickel-titanium (size)",
                0.48,
                slope,
                0.08 / 0.48,
                WIDE);
        assertThat(-slope).isBetween(range.get(0).asDouble(), range.get(1).asDouble());
    }

    @Test
    void heatTreatedWireLastsAsManyTimesLonger() {
        within(
                "Shen and others 2011",
                "lives of heat-treated over conventional wire, 25/.04",
                ReferenceFile.published("ht-gain"),
                cycles("niti-martensitic", Motion.ROTATION) / cycles("niti-superelastic", Motion.ROTATION));
    }

    @Test
    void reciprocationGainsAsMuchOverRotation() {
        within(
                "Martins and others 2026",
                "gain of reciprocation over rotation, %",
                ReferenceFile.published("recip-martins"),
                (cycles("niti-superelastic", Motion.RECIPROCATION) / cycles("niti-superelastic", Motion.ROTATION) - 1)
                        * 100);
    }

    @Test
    void anRPhaseBearsMoreStrainForTenMillionTurns() {
        JsonNode gain = ReferenceFile.published("rphase-gain");
        double more = (endurance("niti-r-phase") - endurance("niti-superelastic")) * 100;
        within("Shape Memory and Superelasticity 2019", "extra strain amplitude at 10⁷ cycles, %", gain, more);
        assertThat(cycles("niti-r-phase", Motion.ROTATION)).isGreaterThan(cycles("niti-superelastic", Motion.ROTATION));
        Findings.remark(
                "Shape Memory and Superelasticity 2019",
                "The gain was found at 10⁷ cycles and is taken to hold at shorter lives; only its direction is known there.");
    }

    /** Tobushi and others 1998: over 1e7 in the R-phase range of strain (below about 0.3 %), under 1e5 beyond. */
    @Test
    void wireLastsTenMillionTurnsAtSmallStrainAndUnderAHundredThousandAtGreat() {
        assertThat(StrainLives.of(NITI).cycles(0.003)).isGreaterThanOrEqualTo(1e7);
        assertThat(StrainLives.of(NITI).cycles(0.01)).isLessThan(1e5);
        Findings.remark(
                "Cheung and Darvell 2007",
                "Orders and directions only: exponents and ratios are inputs carried through, and the cycles of whole "
                        + "instruments (Pruett 1997) were not recovered. Lives of steel rest on handbook ductility alone.");
    }

    /** Found by halving. */
    private static double endurance(String alloy) {
        StrainLife law = StrainLives.of(alloy(alloy));
        double borne = 0;
        double breaks = 0.02;
        while (breaks - borne > 1e-9) {
            double middle = (borne + breaks) / 2;
            if (law.cycles(middle) >= StrainLife.RUN_OUT) {
                borne = middle;
            } else {
                breaks = middle;
            }
        }
        return borne;
    }
}
