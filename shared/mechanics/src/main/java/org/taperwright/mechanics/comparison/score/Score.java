package org.taperwright.mechanics.comparison.score;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.quantity.Band;

/**
 * A design's score with what it is made of.
 *
 * @param contributions one for each metric that counts and has a ratio here, in the comparison's order
 * @param lacking metrics that count but have no ratio above zero here; with any of them there is no total
 * @param band 5 to 95 % of the total, sample by sample; absent where nothing that counts has a band
 */
public record Score(List<Contribution> contributions, List<Metric> lacking, Optional<Band> band) {
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
        return total().isPresent() ? OptionalDouble.of(asRatio(total().getAsDouble())) : OptionalDouble.empty();
    }

    /** 5 to 95 % of {@link #meanRatio}. */
    public Optional<Band> meanRatioBand() {
        return total().isPresent() ? band.map(b -> new Band(asRatio(b.low()), asRatio(b.high()))) : Optional.empty();
    }

    private double asRatio(double sum) {
        return Math.exp(
                sum / contributions.stream().mapToDouble(Contribution::weight).sum());
    }
}
