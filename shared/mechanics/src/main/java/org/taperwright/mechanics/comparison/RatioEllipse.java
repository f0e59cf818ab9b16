package org.taperwright.mechanics.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.uncertainty.Sampled;

/**
 * Where two ratios of a design to the datum lie together: the 90 % ellipse of the normal distribution that has the mean and the
 * covariance of their natural logarithms, sample by sample,
 *
 * <pre>(z - m)' C^-1 (z - m) = chi^2 (0.9; 2 degrees of freedom)</pre>
 *
 * It leans where one constant moves both. Unlike bars, which hold 90 % of each ratio by itself, it holds 90 % of both at once.
 * Validity: logarithms of the ratios near normal.
 *
 * @param across mean logarithm of the first ratio
 * @param up mean logarithm of the second
 * @param varianceAcross variance of the first
 * @param covariance of the two
 * @param varianceUp variance of the second
 */
public record RatioEllipse(double across, double up, double varianceAcross, double covariance, double varianceUp) {
    /** What share of the samples of a normal distribution it holds. */
    public static final double SHARE = 0.9;

    private static final double REACH = Math.sqrt(new ChiSquaredDistribution(2).inverseCumulativeProbability(SHARE));
    /** Less than this is no width. */
    private static final double NONE = 1e-18;

    /** A point of its edge: two ratios. */
    public record Ratios(double across, double up) {}

    /** The ellipse of a design; absent for the datum itself, and where a ratio hangs on nothing uncertain or is none. */
    public static Optional<RatioEllipse> of(Metric across, Metric up, Assessment design, Assessment datum) {
        return of(
                across.sampled(design).over(across.sampled(datum)),
                up.sampled(design).over(up.sampled(datum)));
    }

    static Optional<RatioEllipse> of(Sampled across, Sampled up) {
        Sampled first = across.map(Math::log);
        Sampled second = up.map(Math::log);
        double meanFirst = first.mean();
        double meanSecond = second.mean();
        // about the means, so that nothing is lost by cancelling
        Sampled offFirst = first.map(value -> value - meanFirst);
        Sampled offSecond = second.map(value -> value - meanSecond);
        double varianceFirst = offFirst.with(offFirst, (a, b) -> a * b).mean();
        double varianceSecond = offSecond.with(offSecond, (a, b) -> a * b).mean();
        double both = offFirst.with(offSecond, (a, b) -> a * b).mean();
        boolean finite = Double.isFinite(varianceFirst) && Double.isFinite(varianceSecond) && Double.isFinite(both);
        return finite && varianceFirst + varianceSecond > NONE
                ? Optional.of(new RatioEllipse(meanFirst, meanSecond, varianceFirst, both, varianceSecond))
                : Optional.empty();
    }

    /** Its edge, evenly in the angle; closed, the first point being also the last. */
    public List<Ratios> edge(int points) {
        // C = L L' by Cholesky; a flat ellipse is a line
        double a = Math.sqrt(varianceAcross);
        double b = a > 0 ? covariance / a : 0;
        double c = Math.sqrt(Math.max(0, varianceUp - b * b));
        List<Ratios> edge = new ArrayList<>();
        for (int i = 0; i <= points; i++) {
            double angle = 2 * Math.PI * i / points;
            double x = REACH * Math.cos(angle);
            double y = REACH * Math.sin(angle);
            edge.add(new Ratios(Math.exp(across + a * x), Math.exp(up + b * x + c * y)));
        }
        return edge;
    }
}
