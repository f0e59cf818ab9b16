package org.taperwright.mechanics.comparison.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;

/** The closed form against weights moved at random and to their corners. */
class OrderMarginTest {
    private static final List<Metric> METRICS =
            Metrics.all().stream().filter(ScoreBoard::canCount).limit(4).toList();

    @Property(tries = 200)
    void withinTheMarginNoMoveOfTheWeightsChangesTheOrder(@ForAll long seed) {
        Random random = new Random(seed);
        double[][] logs = logs(random);
        double[] weights = random.doubles(METRICS.size(), 0.1, 3).toArray();
        ScoreBoard board = board(logs, weights);
        double margin = OrderMargin.of(board).all().orElseThrow();
        for (int trial = 0; trial < 50; trial++) {
            double[] moved = weights.clone();
            for (int k = 0; k < moved.length; k++) {
                // to either corner of what is allowed, or anywhere between
                double share = trial % 2 == 0 ? random.nextBoolean() ? 1 : -1 : 2 * random.nextDouble() - 1;
                moved[k] *= 1 + (1 - 1e-9) * margin * share;
            }
            assertThat(board(logs, moved).order()).isEqualTo(board.order());
        }
    }

    @Property(tries = 200)
    void beyondTheMarginSomeCornerChangesTheOrder(@ForAll long seed) {
        Random random = new Random(seed);
        double[][] logs = logs(random);
        double[] weights = random.doubles(METRICS.size(), 0.1, 3).toArray();
        ScoreBoard board = board(logs, weights);
        double margin = OrderMargin.of(board).all().orElseThrow();
        boolean changed = false;
        for (int corner = 0; corner < 1 << weights.length; corner++) {
            double[] moved = weights.clone();
            for (int k = 0; k < moved.length; k++) {
                moved[k] *= 1 + Math.min(1, margin * (1 + 1e-6)) * ((corner >> k & 1) == 0 ? 1 : -1);
            }
            changed |= !board(logs, moved).order().equals(board.order());
        }
        // at a margin of 1 one design is ahead in everything that counts, and only weights of nothing make it level
        assertThat(changed || margin > 1 - 1e-6).isTrue();
    }

    @Property(tries = 200)
    void aSingleWeightMovedByItsShareMakesTheTwoDesignsLevel(@ForAll long seed) {
        Random random = new Random(seed);
        double[][] logs = logs(random);
        double[] weights = random.doubles(METRICS.size(), 0.1, 3).toArray();
        ScoreBoard board = board(logs, weights);
        for (WeightMove move : OrderMargin.of(board).single()) {
            double[] moved = weights.clone();
            moved[METRICS.indexOf(move.metric())] *= 1 + move.share();
            ScoreBoard level = board(logs, moved);
            assertThat(total(level, move.ahead())).isCloseTo(total(level, move.behind()), within(1e-9));
            double[] less = weights.clone();
            less[METRICS.indexOf(move.metric())] *= 1 + (1 - 1e-6) * move.share();
            assertThat(board(logs, less).order()).isEqualTo(board.order());
        }
    }

    @Test
    void aDesignAheadInEveryMetricStaysAheadHoweverTheWeightsMove() {
        ScoreBoard board = board(new double[][] {{0.2, 0.1, 0.3, 0.4}, {0, 0, 0, 0}}, new double[] {1, 2, 3, 4});
        assertThat(OrderMargin.of(board).all().orElseThrow()).isCloseTo(1, within(1e-12));
        assertThat(OrderMargin.of(board).single()).isEmpty();
    }

    /** D = 2 ln 2 - ln 3, so the second weight may rise by D / ln 3 and the first may fall by D / (2 ln 2). */
    @Test
    void twoMetricsAgainstEachOtherByHand() {
        ScoreBoard board =
                board(new double[][] {{Math.log(2), 0, 0, 0}, {0, Math.log(3), 0, 0}}, new double[] {2, 1, 0, 0});
        double ahead = 2 * Math.log(2) - Math.log(3);
        OrderMargin margin = OrderMargin.of(board);
        assertThat(margin.all().orElseThrow()).isCloseTo(ahead / (2 * Math.log(2) + Math.log(3)), within(1e-12));
        assertThat(margin.single())
                .extracting(WeightMove::share)
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(-ahead / (2 * Math.log(2)), within(1e-12)),
                        second -> assertThat(second).isCloseTo(ahead / Math.log(3), within(1e-12)));
    }

    private static double[][] logs(Random random) {
        return IntStream.range(0, 4)
                .mapToObj(design -> random.doubles(METRICS.size(), -1, 1).toArray())
                .toArray(double[][]::new);
    }

    /** A board in which each design's gains are given, whichever way its metrics are wanted. */
    private static ScoreBoard board(double[][] gains, double[] weights) {
        Map<String, Double> byMetric = new HashMap<>();
        for (int k = 0; k < weights.length; k++) {
            byMetric.put(METRICS.get(k).id(), weights[k]);
        }
        List<Score> scores = new ArrayList<>();
        for (double[] design : gains) {
            List<Contribution> contributions = new ArrayList<>();
            for (int k = 0; k < weights.length; k++) {
                Metric metric = METRICS.get(k);
                double sign = metric.direction() == Metric.Direction.LESS ? -1 : 1;
                contributions.add(new Contribution(metric, weights[k], sign * design[k], Optional.empty()));
            }
            scores.add(new Score(contributions, List.of(), Optional.empty()));
        }
        return new ScoreBoard(new Weights(byMetric), scores, List.of());
    }

    private static double total(ScoreBoard board, int design) {
        return board.scores().get(design).total().orElseThrow();
    }
}
