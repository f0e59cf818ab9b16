package org.taperwright.mechanics.comparison.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.uncertainty.Sampled;

/**
 * The scores of all designs of a comparison by one set of weights.
 *
 * @param weights the weights
 * @param scores one for each column
 * @param idle identifiers that have a weight but do not count: no such metric is compared, or neither more nor less of it is
 *     better by itself
 */
public record ScoreBoard(Weights weights, List<Score> scores, List<String> idle) {
    public ScoreBoard {
        scores = List.copyOf(scores);
        idle = List.copyOf(idle);
    }

    /** Scores a comparison. */
    public static ScoreBoard of(Comparison comparison, Weights weights) {
        return of(new LogRatios(comparison), weights);
    }

    /** Scores a comparison whose ratios have been sampled before, as far as other weights asked for them. */
    public static ScoreBoard of(LogRatios ratios, Weights weights) {
        Comparison comparison = ratios.comparison();
        List<ComparisonRow> counting = comparison.rows().stream()
                .filter(row -> canCount(row.metric()) && weights.of(row.metric().id()) > 0)
                .toList();
        List<String> idle = new ArrayList<>(weights.byMetric().keySet());
        counting.forEach(row -> idle.remove(row.metric().id()));
        List<Score> scores = IntStream.range(0, comparison.columns().size())
                .mapToObj(column -> score(ratios, counting, weights, column))
                .toList();
        return new ScoreBoard(weights, scores, idle);
    }

    /** Whether a metric can be part of a score: whether more or less of it is wanted. */
    public static boolean canCount(Metric metric) {
        return metric.direction() != Metric.Direction.NEITHER;
    }

    private static Score score(LogRatios ratios, List<ComparisonRow> counting, Weights weights, int column) {
        List<Contribution> contributions = new ArrayList<>();
        List<Metric> lacking = new ArrayList<>();
        Sampled sum = Sampled.known(0);
        for (ComparisonRow row : counting) {
            Metric metric = row.metric();
            double ratio = row.cells().get(column).ratio().orElse(0);
            if (ratio > 0) {
                double weight = weights.of(metric.id());
                double perLog = new Contribution(metric, weight, 1, Optional.empty()).value();
                Sampled sampled = ratios.of(metric, column).map(log -> perLog * log);
                contributions.add(new Contribution(metric, weight, Math.log(ratio), sampled.band()));
                sum = sum.with(sampled, Double::sum);
            } else {
                lacking.add(metric);
            }
        }
        return new Score(contributions, lacking, sum.band());
    }

    /** The columns that have a total, the highest first; equal ones in the comparison's order. */
    public List<Integer> order() {
        return IntStream.range(0, scores.size())
                .boxed()
                .filter(column -> scores.get(column).total().isPresent())
                .sorted(Comparator.comparingDouble(
                        column -> -scores.get(column).total().getAsDouble()))
                .toList();
    }
}
