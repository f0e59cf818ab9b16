package org.taperwright.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.properties.BladeSections;

/** Orders that the trade holds: common practice, no source. */
class GuidanceTest {
    private static Design tipped(TipKind kind, double angleDeg) {
        return BenchDesigns.tipped(BenchDesigns.of("square", 0.25, 0.02), new Tip(kind, angleDeg));
    }

    private static double attack(TipKind kind, double angleDeg) {
        return Guidance.tipAggressiveness(tipped(kind, angleDeg)).value();
    }

    private static double centring(String family) {
        Design design = BenchDesigns.of(family, 0.25, 0.04);
        return Guidance.selfCentring(CuttingGeometries.of(design, BladeSections.of(design)))
                .value();
    }

    @Test
    void aCuttingTipAttacksMoreThanASemiActiveAndThatMoreThanAPassiveOne() {
        assertThat(attack(TipKind.ACTIVE, 75))
                .isCloseTo(1, within(1e-12))
                .isGreaterThan(attack(TipKind.SEMI_ACTIVE, 75));
        assertThat(attack(TipKind.SEMI_ACTIVE, 75)).isGreaterThan(attack(TipKind.PASSIVE, 75));
        assertThat(attack(TipKind.ACTIVE, 60)).isGreaterThan(attack(TipKind.ACTIVE, 90));
    }

    @Test
    void landsCentreABladeAndASingleEdgeDoesNot() {
        assertThat(centring("scalloped")).isGreaterThan(centring("triangle"));
        assertThat(centring("triangle")).isGreaterThan(centring("teardrop"));
    }

    @Test
    void evenEdgesAreEvenAndASingleOneIsNot() {
        for (Map.Entry<String, Double> expected : Map.of(
                        "square", 1.0, "triangle", 1.0, "rhombus", 1.0, "teardrop", 0.0)
                .entrySet()) {
            Design design = BenchDesigns.of(expected.getKey(), 0.25, 0.04);
            assertThat(Guidance.evenness(CuttingGeometries.of(design, BladeSections.of(design))
                            .each()))
                    .as(expected.getKey())
                    .isCloseTo(expected.getValue(), within(1e-6));
        }
        assertThat(Guidance.evenness(List.of())).isEqualTo(1);
    }
}
