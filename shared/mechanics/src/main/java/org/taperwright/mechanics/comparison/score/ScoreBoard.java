package org.taperwright.mechanics.comparison.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
        List<ComparisonRow> counting = comparison.rows().stream()
                .filter(row -> canCount(row.metric()) && weights.of(row.metric().id()) > 0)
                .toList();
        List<String> idle = new ArrayList<>(weights.byMetric().keySet());
        counting.forEach(row -> idle.remove(row.metric().id()));
        List<Score> scores = IntStream.range(0, comparison.columns().size())
                .mapToObj(column -> score(comparison, counting, weights, column))
                .toList();
        return new ScoreBoard(weights, scores, idle);
    }

    /** Whether a metric can be part of a score: whether more or less of it is wanted. */
    public static boolean canCount(Metric metric) {
        return metric.direction() != Metric.Direction.NEITHER;
    }

    private static Score score(Comparison comparison, List<ComparisonRow> counting, Weights weights, int column) {
        List<Contribution> contributions = new ArrayList<>();
        List<Metric> lacking = new ArrayList<>();
        Sampled sum = Sampled.known(0);
        for (ComparisonRow row : counting) {
            Metric metric = row.metric();
            double ratio = row.cells().get(column).ratio().orElse(0);
            if (ratio > 0) {
                Contribution given = new Contribution(metric, weights.of(metric.id()), Math.log(ratio));
                contributions.add(given);
                sum = sum.with(sampled(comparison, given, column), Double::sum);
            } else {
                lacking.add(metric);
            }
        }
        return new Score(contributions, lacking, sum.band());
    }

    private static Sampled sampled(Comparison comparison, Contribution given, int column) {
        Metric metric = given.metric();
        double perLog = new Contribution(metric, given.weight(), 1).value();
        if (column == comparison.datum()) {
            return Sampled.known(0);
        }
        return metric.sampled(comparison.columns().get(column))
                .over(metric.sampled(comparison.columns().get(comparison.datum())))
                .map(ratio -> perLog * Math.log(ratio));
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
