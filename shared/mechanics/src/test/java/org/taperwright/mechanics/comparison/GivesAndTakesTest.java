package org.taperwright.mechanics.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.work.Progress;

class GivesAndTakesTest {
    private static final Metric FLEXIBILITY = Metrics.find("flexibility").orElseThrow();
    private static final Metric CUTTING = Metrics.find("cutting").orElseThrow();
    private static final Metric TORQUE = Metrics.find("fracture-torque").orElseThrow();

    private static final List<Assessment> COLUMNS = List.of("square", "triangle").stream()
            .map(family -> Assessments.of(BenchDesigns.of(family, 0.25, 0.04), Progress.NONE))
            .map(result -> ((AssessmentResult.Assessed) result).assessment())
            .toList();

    @Test
    void ratiosAreSaidAsPeopleSayThem() {
        assertThat(said(FLEXIBILITY, 1.8734)).isEqualTo("1.9 times as flexible");
        assertThat(said(FLEXIBILITY, 0.7)).isEqualTo("0.7 times as flexible");
        assertThat(said(CUTTING, 0.704)).isEqualTo("0.7 of the cutting by its index");
        assertThat(said(CUTTING, 1.1)).isEqualTo("1.1 times the cutting by its index");
        assertThat(said(TORQUE, 0.6)).isEqualTo("snaps at 0.6 of the torque");
        assertThat(new Statement(TORQUE, 0.6, Optional.of(new Band(0.512, 0.68))).words())
                .isEqualTo("snaps at 0.6 of the torque (0.51 to 0.68)");
    }

    /** Published bench studies find triangular files more flexible and weaker in torsion than square ones of their size. */
    @Test
    void aTriangleAgainstASquareGivesFlexibilityAndTakesTorque() {
        Comparison comparison = Comparisons.of(COLUMNS, 0);
        GivesAndTakes triangle = GivesAndTakes.of(comparison, 1).orElseThrow();
        assertThat(triangle.gives()).extracting(Statement::metric).contains(FLEXIBILITY);
        assertThat(triangle.takes()).extracting(Statement::metric).contains(TORQUE);
        double ratio = cell(comparison, FLEXIBILITY, 1).ratio().orElseThrow();
        assertThat(triangle.text())
                .startsWith("bench against bench. For: ")
                .contains(Saying.twoDigits(ratio) + " times as flexible (");
    }

    @Test
    void whatABandOfTheRatioDoesNotTellFromOneIsNeitherGivenNorTaken() {
        Statement unsure = new Statement(FLEXIBILITY, 1.2, Optional.of(new Band(0.9, 1.5)));
        Statement sure = new Statement(FLEXIBILITY, 1.2, Optional.of(new Band(1.1, 1.3)));
        assertThat(unsure.toldApart()).isFalse();
        assertThat(sure.toldApart()).isTrue();
        assertThat(sure.wanted()).isTrue();
    }

    @Test
    void theDatumGivesAndTakesNothingAndADesignLikeItIsNotToldApart() {
        Comparison comparison = Comparisons.of(List.of(COLUMNS.get(0), COLUMNS.get(0)), 0);
        assertThat(GivesAndTakes.of(comparison, 0)).isEmpty();
        GivesAndTakes twin = GivesAndTakes.of(comparison, 1).orElseThrow();
        assertThat(twin.gives()).isEmpty();
        assertThat(twin.takes()).isEmpty();
        assertThat(twin.sentences()).singleElement().asString().startsWith("Not told apart: flexibility;");
    }

    private static String said(Metric metric, double ratio) {
        return new Statement(metric, ratio, Optional.empty()).words();
    }

    private static ComparisonCell cell(Comparison comparison, Metric metric, int column) {
        return comparison.rows().stream()
                .filter(row -> row.metric().equals(metric))
                .findFirst()
                .orElseThrow()
                .cells()
                .get(column);
    }
}
