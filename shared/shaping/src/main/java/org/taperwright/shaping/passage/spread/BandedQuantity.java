package org.taperwright.shaping.passage.spread;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;

/**
 * A quantity with what is not known of it.
 *
 * @param quantity which
 * @param value its value at the middle of every input, on the fine mesh
 * @param band 5 to 95 % of the samples; empty where a twentieth of them or more have no value
 * @param correlations with each input that it hangs on, in the order of the inputs
 */
public record BandedQuantity(
        ShapedQuantity quantity, double value, Optional<Band> band, List<Correlation> correlations) {
    public BandedQuantity {
        correlations = List.copyOf(correlations);
    }

    /**
     * Rank correlation with an input, -1 to 1.
     *
     * @param input the input
     * @param rank Spearman's coefficient
     */
    public record Correlation(UncertainInput input, double rank) {}

    /** What it is that is not known: the input that the value follows most closely; empty where none stands out of chance. */
    public Optional<Correlation> strongest() {
        return correlations.stream()
                .filter(c -> Math.abs(c.rank()) >= ShapingBands.CHANCE)
                .max(Comparator.comparingDouble(c -> Math.abs(c.rank())));
    }
}
