package org.taperwright.mechanics.measured;

import java.util.List;
import org.taperwright.mechanics.alloy.Alloy;

/**
 * An alloy whose chosen constants were fitted to measured curves. It is an alloy of its own; the one it began from stays.
 *
 * @param alloy the fitted alloy
 * @param constants the chosen constants, in the order chosen
 * @param covariance of the constants, in the same order and their units; zero rows for those held at an edge
 * @param residuals after the fit, one for each curve
 * @param scatter standard deviation of a point about the fitted curve, over the greatest value of its curve
 * @param evaluations how often the curves were computed
 */
public record AlloyFit(
        Alloy alloy,
        List<FittedConstant> constants,
        List<List<Double>> covariance,
        List<Residuals> residuals,
        double scatter,
        int evaluations) {
    public AlloyFit {
        constants = List.copyOf(constants);
        covariance = covariance.stream().map(List::copyOf).toList();
        residuals = List.copyOf(residuals);
    }

    /** Correlation of two constants; zero where one was held. */
    public double correlation(int first, int second) {
        double both = Math.sqrt(
                covariance.get(first).get(first) * covariance.get(second).get(second));
        return both > 0 ? covariance.get(first).get(second) / both : 0;
    }
}
