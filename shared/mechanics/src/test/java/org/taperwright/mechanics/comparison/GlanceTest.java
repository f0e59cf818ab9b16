package org.taperwright.mechanics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.work.Progress;

class GlanceTest {
    /** A glance takes a shorter way to the same number as the whole assessment. */
    @ParameterizedTest
    @CsvSource({"15, 0.02, stainless-steel", "25, 0.04, niti-superelastic", "40, 0.06, niti-martensitic"})
    void everyMetricIsWhatTheWholeAssessmentSays(int size, double taper, String alloy) {
        Design design = Designs.with(Designs.standard(size, taper)).alloy(alloy).design();
        Assessment whole = ((AssessmentResult.Assessed) Assessments.of(design, Progress.NONE)).assessment();
        Map<Metric, Double> glance = Glance.values(design, KnownAlloys.SHIPPED, Metrics.all(), Progress.NONE);
        assertThat(glance).hasSameSizeAs(Metrics.all());
        glance.forEach((metric, value) -> assertThat(value)
                .as(metric.id())
                .isCloseTo(metric.value(whole), within(1e-5 * Math.abs(metric.value(whole)))));
    }

    @Test
    void aDesignThatCannotBeComputedHasNoValues() {
        Design impossible =
                Designs.with(Designs.standard(25, 0.04)).tipDiameterMm(0).design();
        Design unknown =
                Designs.with(Designs.standard(25, 0.04)).alloy("unobtainium").design();
        for (Design each : List.of(impossible, unknown)) {
            assertThat(Glance.values(each, KnownAlloys.SHIPPED, Metrics.all(), Progress.NONE))
                    .isEmpty();
        }
    }
}
