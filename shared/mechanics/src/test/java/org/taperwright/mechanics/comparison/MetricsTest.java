package org.taperwright.mechanics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.work.Progress;

class MetricsTest {
    private static final List<Assessment> ASSESSED = List.of("square", "triangle", "scalloped", "teardrop").stream()
            .map(family -> BenchDesigns.of(family, 0.25, 0.04))
            .flatMap(design -> Stream.of(design, BenchDesigns.inAlloy(design, "niti-martensitic")))
            .map(design -> Assessments.of(design, Progress.NONE))
            .map(result -> ((AssessmentResult.Assessed) result).assessment())
            .toList();

    static List<Metric> all() {
        return Metrics.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyMetricDeclaresItselfInWholeSentences(Metric metric) {
        assertThat(metric.id()).matches("[a-z0-9]+(-[a-z0-9]+)*");
        assertThat(metric.label()).isNotBlank();
        assertThat(metric.explanation()).endsWith(".").contains(" ");
        assertThat(metric.source()).isNotBlank();
        assertThat(Metrics.find(metric.id())).contains(metric);
    }

    @Test
    void metricsStandInTheOrderOfTheirGroupsAndPlacesUnderNamesOfTheirOwn() {
        assertThat(Metrics.all()).extracting(Metric::id).doesNotHaveDuplicates();
        assertThat(Metrics.all())
                .extracting(metric -> metric.group().ordinal() * 1000 + metric.order())
                .isSorted();
        assertThat(Metrics.all()).extracting(Metric::id).contains(Metrics.FLEXIBILITY, Metrics.CUTTING);
    }

    /** Of every family in a steel and a NiTi alloy: what hangs on uncertain constants never stands without its band. */
    @ParameterizedTest
    @MethodSource("all")
    void everyEstimateAndIndexHasABandAroundItsValueAndNothingComputedHasOne(Metric metric) {
        for (Assessment assessment : ASSESSED) {
            Reading reading = metric.read(assessment);
            assertThat(metric.value(assessment)).isCloseTo(reading.value(), within(1e-9 * Math.abs(reading.value())));
            if (metric.standing() == Standing.COMPUTED) {
                assertThat(reading.band()).as(metric.id()).isEmpty();
            } else {
                Band band = reading.band().orElseThrow(() -> new AssertionError(metric.id() + " has no band"));
                assertThat(reading.value()).as(metric.id()).isBetween(band.low(), band.high());
            }
        }
    }
}
