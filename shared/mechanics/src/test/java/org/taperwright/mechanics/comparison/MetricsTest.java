package org.taperwright.mechanics.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MetricsTest {
    static java.util.List<Metric> all() {
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
}
