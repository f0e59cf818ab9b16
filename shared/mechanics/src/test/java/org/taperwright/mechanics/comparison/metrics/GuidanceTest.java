package org.taperwright.mechanics.comparison.metrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.work.Progress;

/** Directions that the trade holds: common practice, no source. */
class GuidanceTest {
    private static Assessment assessed(Design design) {
        return ((AssessmentResult.Assessed) Assessments.of(design, Progress.NONE)).assessment();
    }

    private static Assessment of(String family) {
        return assessed(BenchDesigns.of(family, 0.25, 0.04));
    }

    private static double tip(TipKind kind, double angleDeg) {
        Design design = Designs.with(BenchDesigns.of("square", 0.25, 0.04))
                .tip(new Tip(kind, angleDeg))
                .design();
        return new TipAggressiveness().read(assessed(design)).value();
    }

    @Test
    void aTipThatCutsMoreOrIsMoreSlenderIsMoreAggressive() {
        assertThat(tip(TipKind.ACTIVE, 75)).isGreaterThan(tip(TipKind.SEMI_ACTIVE, 75));
        assertThat(tip(TipKind.SEMI_ACTIVE, 75)).isGreaterThan(tip(TipKind.PASSIVE, 75));
        assertThat(tip(TipKind.ACTIVE, 60)).isGreaterThan(tip(TipKind.ACTIVE, 75));
    }

    @Test
    void evenEdgesKeepToTheMiddleLandsKeepBetterAndOneEdgeDoesNot() {
        SelfCentring metric = new SelfCentring();
        assertThat(metric.read(of("square")).value()).isCloseTo(1, within(1e-6));
        assertThat(metric.read(of("scalloped")).value())
                .isGreaterThan(metric.read(of("square")).value());
        assertThat(metric.read(of("teardrop")).value()).isCloseTo(0, within(1e-6));
    }

    @Test
    void theTorsionalReserveGrowsWithSize() {
        TorsionalReserve metric = new TorsionalReserve();
        assertThat(metric.read(assessed(BenchDesigns.of("square", 0.30, 0.04))).value())
                .isGreaterThan(metric.read(of("square")).value());
    }

    @Test
    void whatWasAddedAsEstimateOrIndexCarriesABandAroundItsValue() {
        Assessment assessment = of("scalloped");
        for (String id : new String[] {
            "cycles-to-fracture", "time-to-fracture", "torsional-reserve", "tip-aggressiveness", "self-centring"
        }) {
            Metric metric = Metrics.find(id).orElseThrow();
            assertThat(metric.standing()).isNotEqualTo(Standing.COMPUTED);
            var reading = metric.read(assessment);
            assertThat(reading.value())
                    .as(id)
                    .isBetween(
                            reading.band().orElseThrow().low(),
                            reading.band().orElseThrow().high());
        }
    }
}
