package org.taperwright.mechanics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.work.Progress;

class ComparisonOfDesignsTest {
    private static final List<Assessment> COLUMNS = List.of("square", "triangle", "scalloped", "rhombus").stream()
            .map(family -> Assessments.of(BenchDesigns.of(family, 0.25, 0.04), Progress.NONE))
            .map(result -> ((AssessmentResult.Assessed) result).assessment())
            .toList();

    @Property(tries = 4)
    void theDatumsRatiosAreOne(@ForAll @IntRange(min = 0, max = 3) int datum) {
        for (ComparisonRow row : Comparisons.of(COLUMNS, datum).rows()) {
            ComparisonCell cell = row.cells().get(datum);
            if (cell.reading().value() <= 0) {
                assertThat(cell.ratio()).isEmpty();
            } else {
                assertThat(cell.ratio().orElseThrow()).isEqualTo(1);
            }
        }
    }

    @Test
    void ratiosAreTakenAgainstTheDatum() {
        Comparison comparison = Comparisons.of(COLUMNS, 1);
        for (ComparisonRow row : comparison.rows()) {
            double datum = row.cells().get(1).reading().value();
            for (ComparisonCell cell : row.cells()) {
                cell.ratio()
                        .ifPresent(ratio -> assertThat(ratio * datum)
                                .isCloseTo(
                                        cell.reading().value(),
                                        within(1e-12 * Math.abs(cell.reading().value()))));
            }
        }
    }

    @Test
    void everyMetricHasARowAndEveryDesignACell() {
        Comparison comparison = Comparisons.of(COLUMNS, 0);
        assertThat(comparison.rows()).extracting(ComparisonRow::metric).containsExactlyElementsOf(Metrics.all());
        assertThat(comparison.rows()).allSatisfy(row -> assertThat(row.cells()).hasSameSizeAs(COLUMNS));
        assertThat(comparison.undominated()).hasSameSizeAs(COLUMNS).contains(true);
    }

    @Test
    void flexibilityIsTheInverseOfTheBendingMoment() {
        Comparison comparison = Comparisons.of(COLUMNS, 0);
        List<ComparisonCell> flexibility = row(comparison, "flexibility").cells();
        List<ComparisonCell> moment = row(comparison, "bending-moment-45").cells();
        for (int i = 0; i < COLUMNS.size(); i++) {
            assertThat(flexibility.get(i).ratio().orElseThrow())
                    .isCloseTo(1 / moment.get(i).ratio().orElseThrow(), within(1e-12));
        }
    }

    @Test
    void aDatumOutsideTheColumnsIsRefused() {
        assertThatThrownBy(() -> Comparisons.of(COLUMNS, 4))
                .isInstanceOf(IndexOutOfBoundsException.class)
                .hasMessageContaining("datum 4");
    }

    private static ComparisonRow row(Comparison comparison, String metric) {
        return comparison.rows().stream()
                .filter(row -> row.metric().id().equals(metric))
                .findFirst()
                .orElseThrow();
    }
}
