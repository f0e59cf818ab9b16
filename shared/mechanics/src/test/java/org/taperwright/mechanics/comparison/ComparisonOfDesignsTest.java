package org.taperwright.mechanics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Standing;
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
        assertThat(comparison.tradeOff().places()).hasSameSizeAs(COLUMNS).anyMatch(TradeOff.Place::undominated);
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

    /** What stands on uncertain constants has a band at its ratio as at its value; the datum against itself is 1. */
    @Test
    void everyRatioOfAnEstimateOrIndexHasABandAroundIt() {
        for (ComparisonRow row : Comparisons.of(COLUMNS, 1).rows()) {
            for (int i = 0; i < COLUMNS.size(); i++) {
                ComparisonCell cell = row.cells().get(i);
                if (cell.ratio().isPresent() && row.metric().standing() != Standing.COMPUTED) {
                    Band band = cell.ratioBand()
                            .orElseThrow(() -> new AssertionError(row.metric().id()));
                    assertThat(cell.ratio().getAsDouble()).isBetween(band.low(), band.high());
                    assertThat(i == 1 ? band : new Band(1, 1)).isEqualTo(new Band(1, 1));
                } else {
                    assertThat(cell.ratioBand()).as(row.metric().id()).isEmpty();
                }
            }
        }
    }

    /**
     * Sand-heap torques of one alloy are both proportional to its shear yield, whatever that is: their ratio is one of
     * geometry. Of two alloys the yields differ, and so does their ratio.
     */
    @Test
    void whatTwoDesignsOfOneAlloyShareCancelsInTheirRatio() {
        Band shared = row(Comparisons.of(COLUMNS, 0), "plastic-torque")
                .cells()
                .get(1)
                .ratioBand()
                .orElseThrow();
        assertThat(shared.high() / shared.low()).isCloseTo(1, within(1e-9));
        Design square = BenchDesigns.of("square", 0.25, 0.04);
        List<Assessment> alloys = Stream.of(square, BenchDesigns.inAlloy(square, "niti-martensitic"))
                .map(design -> ((AssessmentResult.Assessed) Assessments.of(design, Progress.NONE)).assessment())
                .toList();
        ComparisonCell apart =
                row(Comparisons.of(alloys, 0), "plastic-torque").cells().get(1);
        Band own = apart.reading().band().orElseThrow();
        Band band = apart.ratioBand().orElseThrow();
        assertThat(band.high() / band.low()).isGreaterThan(own.high() / own.low());
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
