package org.taperwright.mechanics.measured;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is kept of a fit with the alloy it made: enough to judge it by, without the measurements themselves.
 *
 * @param design name of the design whose measurements were fitted
 * @param day when
 * @param constants the constants fitted
 * @param covariance of them, in their order and units
 * @param residuals one for each curve and table of lives
 * @param curveScatter standard deviation of a point about the fitted curve, over the greatest value of its curve
 * @param lifeScatter standard deviation of the natural logarithm of a life about the fitted one
 */
public record FitAccount(
        String design,
        LocalDate day,
        List<Constant> constants,
        List<List<Double>> covariance,
        List<Residual> residuals,
        OptionalDouble curveScatter,
        OptionalDouble lifeScatter) {
    public FitAccount {
        constants = List.copyOf(constants);
        covariance = covariance.stream().map(List::copyOf).toList();
        residuals = List.copyOf(residuals);
        int size = constants.size();
        if (covariance.size() != size || covariance.stream().anyMatch(row -> row.size() != size)) {
            throw new IllegalArgumentException(
                    "has a covariance of another size than the " + size + " constants fitted");
        }
    }

    /**
     * A constant fitted.
     *
     * @param name its key, see {@link FitConstants}
     * @param before its value before
     * @param value its value after
     * @param standardError its standard error; zero where it was held
     * @param atEdge whether it was held at an edge of its band
     */
    public record Constant(String name, double before, double value, double standardError, boolean atEdge) {}

    /**
     * How well a curve or table of lives is met.
     *
     * @param label its name
     * @param points how many points were used
     * @param left how many were not
     * @param share root of the mean square of the differences: of a curve over its greatest value, of lives in natural logarithms
     */
    public record Residual(String label, int points, int left, double share) {}

    /** The account of a fit made on a day. */
    public static FitAccount of(AlloyFit fit, String design, LocalDate day) {
        return new FitAccount(
                design,
                day,
                fit.constants().stream()
                        .map(each -> new Constant(
                                each.before().name(),
                                each.before().value(),
                                each.value(),
                                each.standardError(),
                                each.atEdge()))
                        .toList(),
                fit.covariance(),
                fit.residuals().stream()
                        .map(each -> new Residual(
                                each.measured().label(), each.points().size(), each.left(), share(each)))
                        .toList(),
                fit.curveScatter(),
                fit.lifeScatter());
    }

    private static double share(Residuals residuals) {
        return residuals.measured() instanceof MeasuredLives ? residuals.ofLogarithms() : residuals.relative();
    }
}
