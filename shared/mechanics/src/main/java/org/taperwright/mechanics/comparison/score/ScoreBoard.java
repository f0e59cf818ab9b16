package org.taperwright.mechanics.comparison.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.comparison.Metric;

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
                .mapToObj(column -> score(counting, weights, column))
                .toList();
        return new ScoreBoard(weights, scores, idle);
    }

    /** Whether a metric can be part of a score: whether more or less of it is wanted. */
    public static boolean canCount(Metric metric) {
        return metric.direction() != Metric.Direction.NEITHER;
    }

    private static Score score(List<ComparisonRow> counting, Weights weights, int column) {
        List<Contribution> contributions = new ArrayList<>();
        List<Metric> lacking = new ArrayList<>();
        for (ComparisonRow row : counting) {
            double ratio = row.cells().get(column).ratio().orElse(0);
            if (ratio > 0) {
                contributions.add(
                        new Contribution(row.metric(), weights.of(row.metric().id()), Math.log(ratio)));
            } else {
                lacking.add(row.metric());
            }
        }
        return new Score(contributions, lacking);
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
