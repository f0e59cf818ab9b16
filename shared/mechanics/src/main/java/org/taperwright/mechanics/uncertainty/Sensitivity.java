package org.taperwright.mechanics.uncertainty;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/**
 * Samples of results that are too costly to solve at every one: they are solved at the constants and, one constant at a time,
 * at both edges of that constant's band. A result (or its logarithm) is taken as straight between those and on, and the
 * constants as acting by themselves; the Latin hypercube's samples are drawn of that. A constant's value stands for its
 * median, its band's edges for 5 and 95 %. Where an edge has no solution the constant is varied half as far, and so on.
 * Validity: results that change by much less than a power of ten over a band.
 */
public final class Sensitivity {
    private static final int HALVINGS = 3;
    /** Edges without a solution, all constants together, after which no other share of the way is tried. */
    private static final int FAILURES = 6;

    private final List<UncertainConstant> constants;
    private final double[] middle;
    private final double[][] below;
    private final double[][] above;
    /** What share of the way to the edge each solution stands at. */
    private final double[] belowAt;

    private final double[] aboveAt;
    private final LatinHypercube cube;
    private int failures;

    private Sensitivity(List<UncertainConstant> constants, double[] middle) {
        this.constants = constants;
        this.middle = middle;
        this.below = new double[constants.size()][];
        this.above = new double[constants.size()][];
        this.belowAt = new double[constants.size()];
        this.aboveAt = new double[constants.size()];
        this.cube = LatinHypercube.of(
                constants.stream().map(UncertainConstant::name).toList());
    }

    /**
     * Solves what is needed.
     *
     * @param constants the constants
     * @param middle the results at the constants
     * @param results the results at other values of them, in the same order; absent where there is no solution
     */
    public static Sensitivity of(
            List<UncertainConstant> constants, double[] middle, Function<double[], Optional<double[]>> results) {
        Sensitivity surface = new Sensitivity(List.copyOf(constants), middle.clone());
        for (int k = 0; k < constants.size(); k++) {
            surface.below[k] = middle;
            surface.above[k] = middle;
            if (constants.get(k).band().isPresent()) {
                surface.belowAt[k] = surface.solve(k, -1, results);
                surface.aboveAt[k] = surface.solve(k, 1, results);
            }
        }
        return surface;
    }

    /** The share of the way at which there is a solution; 0 where there is none. */
    private double solve(int constant, int side, Function<double[], Optional<double[]>> results) {
        double share = 1;
        for (int halving = 0; halving <= HALVINGS && (halving == 0 || failures <= FAILURES); halving++) {
            double[] at =
                    constants.stream().mapToDouble(UncertainConstant::value).toArray();
            at[constant] = constants.get(constant).towards(side * share);
            Optional<double[]> found = results.apply(at);
            if (found.isPresent()) {
                (side < 0 ? below : above)[constant] = found.get();
                return share;
            }
            failures++;
            share /= 2;
        }
        return 0;
    }

    /** A result whose logarithm is straight; one that is nowhere zero or less, or else {@link #byDifference}. */
    public Sampled byRatio(int result) {
        boolean positive = middle[result] > 0;
        for (int k = 0; k < below.length; k++) {
            positive &= below[k][result] > 0 && above[k][result] > 0;
        }
        double value = middle[result];
        return positive ? sampled(result, Math::log, sum -> value * Math.exp(sum)) : byDifference(result);
    }

    /** A result that is itself straight, and not below zero where none of the solutions is. */
    public Sampled byDifference(int result) {
        double least = Math.min(0, middle[result]);
        for (int k = 0; k < below.length; k++) {
            least = Math.min(least, Math.min(below[k][result], above[k][result]));
        }
        double floor = least < 0 ? Double.NEGATIVE_INFINITY : 0;
        double value = middle[result];
        return sampled(result, x -> x, sum -> Math.max(floor, value + sum));
    }

    private Sampled sampled(int result, DoubleUnaryOperator straight, DoubleUnaryOperator back) {
        double[] down = new double[below.length];
        double[] up = new double[below.length];
        double from = straight.applyAsDouble(middle[result]);
        for (int k = 0; k < below.length; k++) {
            down[k] = belowAt[k] == 0 ? 0 : (straight.applyAsDouble(below[k][result]) - from) / belowAt[k];
            up[k] = aboveAt[k] == 0 ? 0 : (straight.applyAsDouble(above[k][result]) - from) / aboveAt[k];
        }
        return cube.sample(middle[result], shares -> {
            double sum = 0;
            for (int k = 0; k < shares.length; k++) {
                double beyond = UncertainConstant.beyond(shares[k]);
                sum += beyond < 0 ? -beyond * down[k] : beyond * up[k];
            }
            return back.applyAsDouble(sum);
        });
    }
}
