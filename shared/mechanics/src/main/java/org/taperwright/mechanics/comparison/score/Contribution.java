package org.taperwright.mechanics.comparison.score;

import java.util.Optional;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.quantity.Band;

/**
 * What one metric gives to a design's score: {@code w s ln r}, with the weight w, s = 1 where more is wanted and -1 where less
 * is, and the ratio r to the datum.
 *
 * @param metric the metric, one of which more or less is wanted
 * @param weight its weight w
 * @param logRatio natural logarithm of the ratio to the datum
 * @param band 5 to 95 % of its value, sample by sample; absent where nothing it hangs on is uncertain
 */
public record Contribution(Metric metric, double weight, double logRatio, Optional<Band> band) {
    /** The signed contribution. */
    public double value() {
        return weight * gain();
    }

    /** What the weight multiplies: the logarithm of the ratio, turned so that more is better. */
    public double gain() {
        return metric.direction() == Metric.Direction.LESS ? -logRatio : logRatio;
    }
}
