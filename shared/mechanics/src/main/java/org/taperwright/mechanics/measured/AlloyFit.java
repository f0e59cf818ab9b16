package org.taperwright.mechanics.measured;

import java.util.List;
import java.util.OptionalDouble;
import org.taperwright.mechanics.alloy.Alloy;

/**
 * An alloy whose chosen constants were fitted to measured curves and lives. It is an alloy of its own; the one it began from stays.
 *
 * @param alloy the fitted alloy
 * @param constants the chosen constants, those of the curves first
 * @param covariance of the constants, in the same order and their units; zero rows for those held at an edge, and zero between
 *     constants of the curves and of the lives, which share nothing
 * @param residuals after the fit, one for each curve and table of lives
 * @param curveScatter standard deviation of a point about the fitted curve, over the greatest value of its curve; absent where no
 *     curve was fitted
 * @param lifeScatter standard deviation of the natural logarithm of a life about the fitted one; absent where none was fitted
 * @param evaluations how often the measurements were computed
 */
public record AlloyFit(
        Alloy alloy,
        List<FittedConstant> constants,
        List<List<Double>> covariance,
        List<Residuals> residuals,
        OptionalDouble curveScatter,
        OptionalDouble lifeScatter,
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
