package org.taperwright.mechanics.comparison.score;

import java.util.List;
import java.util.OptionalDouble;
import org.taperwright.mechanics.comparison.Metric;

/**
 * A design's score with what it is made of.
 *
 * @param contributions one for each metric that counts and has a ratio here, in the comparison's order
 * @param lacking metrics that count but have no ratio above zero here; with any of them there is no total
 */
public record Score(List<Contribution> contributions, List<Metric> lacking) {
    public Score {
        contributions = List.copyOf(contributions);
        lacking = List.copyOf(lacking);
    }

    /** The sum of the contributions; zero for the datum. Absent when a metric is lacking or none counts. */
    public OptionalDouble total() {
        return lacking.isEmpty() && !contributions.isEmpty()
                ? OptionalDouble.of(
                        contributions.stream().mapToDouble(Contribution::value).sum())
                : OptionalDouble.empty();
    }

    /**
     * The score as one ratio to the datum: {@code exp(total / sum of weights)}, the weighted geometric mean of the ratios, each
     * turned so that more is better.
     */
    public OptionalDouble meanRatio() {
        double weights =
                contributions.stream().mapToDouble(Contribution::weight).sum();
        return total().isPresent()
                ? OptionalDouble.of(Math.exp(total().getAsDouble() / weights))
                : OptionalDouble.empty();
    }
}
