package org.taperwright.mechanics.comparison.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.comparison.Comparisons;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.uncertainty.Sampled;
import org.taperwright.mechanics.work.Progress;

class ScoreBoardTest {
    private static final List<Assessment> COLUMNS = List.of("square", "triangle", "scalloped").stream()
            .map(family -> Assessments.of(BenchDesigns.of(family, 0.25, 0.04), Progress.NONE))
            .map(result -> ((AssessmentResult.Assessed) result).assessment())
            .toList();
    private static final Comparison COMPARISON = Comparisons.of(COLUMNS, 0);

    @Test
    void aScoreIsTheSumOfWeightTimesLogarithmOfTheRatioTurnedTowardsWhatIsWanted() {
        ScoreBoard board = ScoreBoard.of(COMPARISON, new Weights(Map.of("flexibility", 2.0, "wedge-angle", 0.5)));
        double flexibility = ratio("flexibility", 1);
        double wedge = ratio("wedge-angle", 1);
        assertThat(board.scores().get(1).total().orElseThrow())
                .isCloseTo(2 * Math.log(flexibility) - 0.5 * Math.log(wedge), within(1e-12));
        assertThat(board.scores().get(1).meanRatio().orElseThrow())
                .isCloseTo(Math.pow(flexibility * flexibility / Math.sqrt(wedge), 1 / 2.5), within(1e-12));
    }

    @Test
    void theDatumScoresNothingAndItsMeanRatioIsOne() {
        for (Purpose purpose : Purpose.all()) {
            Score datum = ScoreBoard.of(COMPARISON, purpose.weights()).scores().get(0);
            assertThat(datum.total().orElseThrow()).isZero();
            assertThat(datum.meanRatio().orElseThrow()).isEqualTo(1);
        }
    }

    /** An unweighted sum of contributions must be all there is: never add what is not shown. */
    @Test
    void everyWeightIsEitherShownOrSaidToBeIdle() {
        Weights weights = new Weights(Map.of("flexibility", 1.0, "helix-angle", 1.0, "no-such-metric", 1.0));
        ScoreBoard board = ScoreBoard.of(COMPARISON, weights);
        assertThat(board.idle()).containsExactly("helix-angle", "no-such-metric");
        assertThat(board.scores().get(0).contributions())
                .extracting(each -> each.metric().id())
                .containsExactly("flexibility");
    }

    @Test
    void withoutARatioThereIsNoTotal() {
        Weights weights = new Weights(Map.of("rake", 1.0, "flexibility", 1.0));
        Score score = ScoreBoard.of(COMPARISON, weights).scores().get(1);
        // the datum's rake is below zero, so there is no ratio to it
        assertThat(score.lacking()).extracting(Metric::id).containsExactly("rake");
        assertThat(score.total()).isEmpty();
        assertThat(score.meanRatio()).isEmpty();
    }

    /** With one weight the score is that metric's ratio, so its band is that ratio's; with two it is wider than nothing. */
    @Test
    void aScoreHasTheBandOfItsRatios() {
        ScoreBoard one = ScoreBoard.of(COMPARISON, new Weights(Map.of("cutting", 2.5)));
        Band ratio = row("cutting").cells().get(2).ratioBand().orElseThrow();
        Band mean = one.scores().get(2).meanRatioBand().orElseThrow();
        assertThat(mean.low()).isCloseTo(ratio.low(), within(1e-9));
        assertThat(mean.high()).isCloseTo(ratio.high(), within(1e-9));
        assertThat(ScoreBoard.of(COMPARISON, new Weights(Map.of("chip-space", 1.0)))
                        .scores()
                        .get(2)
                        .band())
                .as("a computed metric has none")
                .isEmpty();
    }

    /** Each metric of each design is drawn once, whatever weights are tried after. */
    @Test
    void otherWeightsAskForNoOtherSamples() {
        LogRatios ratios = new LogRatios(COMPARISON);
        Metric cutting = row("cutting").metric();
        Sampled first = ratios.of(cutting, 2);
        for (double weight : new double[] {1, 2.5}) {
            Weights weights = new Weights(Map.of("cutting", weight, "flexibility", 1.0));
            assertThat(ScoreBoard.of(ratios, weights)).isEqualTo(ScoreBoard.of(COMPARISON, weights));
        }
        assertThat(ratios.of(cutting, 2)).isSameAs(first);
    }

    /** What a metric gives is its weight times the logarithm of its ratio, and so are the ends of its band. */
    @Test
    void eachContributionHasTheBandOfItsRatio() {
        ScoreBoard board = ScoreBoard.of(COMPARISON, new Weights(Map.of("cutting", 2.5, "chip-space", 1.0)));
        Band ratio = row("cutting").cells().get(2).ratioBand().orElseThrow();
        Contribution cutting = board.scores().get(2).contributions().get(0);
        assertThat(cutting.metric().id()).isEqualTo("cutting");
        assertThat(cutting.band().orElseThrow().low()).isCloseTo(2.5 * Math.log(ratio.low()), within(1e-9));
        assertThat(cutting.band().orElseThrow().high()).isCloseTo(2.5 * Math.log(ratio.high()), within(1e-9));
        assertThat(board.scores().get(2).contributions().get(1).band())
                .as("a computed metric has none")
                .isEmpty();
    }

    @Test
    void onlyTheProportionsOfWeightsMatter() {
        Weights weights = Purpose.find("narrow-curve").orElseThrow().weights();
        Weights twice = weights;
        for (Map.Entry<String, Double> each : weights.byMetric().entrySet()) {
            twice = twice.with(each.getKey(), 2 * each.getValue());
        }
        ScoreBoard one = ScoreBoard.of(COMPARISON, weights);
        ScoreBoard two = ScoreBoard.of(COMPARISON, twice);
        assertThat(two.order()).isEqualTo(one.order());
        assertThat(two.scores().get(2).meanRatio().orElseThrow())
                .isCloseTo(one.scores().get(2).meanRatio().orElseThrow(), within(1e-12));
        assertThat(OrderMargin.of(two).all().orElseThrow())
                .isCloseTo(OrderMargin.of(one).all().orElseThrow(), within(1e-12));
    }

    @Test
    void everyPurposeWeighsMetricsThatCanCount() {
        assertThat(Purpose.all()).extracting(Purpose::id).doesNotHaveDuplicates();
        for (Purpose purpose : Purpose.all()) {
            assertThat(purpose.weights().byMetric().keySet())
                    .allSatisfy(
                            id -> assertThat(Metrics.find(id)).isPresent().get().matches(ScoreBoard::canCount));
        }
    }

    @Test
    void aWeightBelowZeroOrNotFiniteIsRefused() {
        assertThatThrownBy(() -> Weights.NONE.with("cutting", -1)).hasMessageContaining("cutting", "not below zero");
        assertThatThrownBy(() -> Weights.NONE.with("cutting", Double.NaN)).hasMessageContaining("cutting");
        assertThatThrownBy(() -> Weights.NONE.with("cutting", Double.POSITIVE_INFINITY))
                .hasMessageContaining("cutting");
    }

    private static double ratio(String metric, int column) {
        return row(metric).cells().get(column).ratio().orElseThrow();
    }

    private static ComparisonRow row(String metric) {
        return COMPARISON.rows().stream()
                .filter(row -> row.metric().id().equals(metric))
                .findFirst()
                .orElseThrow();
    }
}
