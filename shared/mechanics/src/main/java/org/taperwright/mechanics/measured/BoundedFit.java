package org.taperwright.mechanics.measured;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.optim.SimpleVectorValueChecker;
import org.apache.commons.math3.util.Pair;
import org.taperwright.mechanics.alloy.AlloyConstant;

/**
 * Least squares within bounds: Levenberg and Marquardt on {@code u} with {@code value = low + (high - low) (1 + sin u) / 2},
 * which cannot leave the band. The covariance is that of the values themselves, {@code s^2 (J^T J)^-1} with the differences J by
 * the values at the solution and the scatter {@code s^2 = sum r^2 / (n - p)}; values that came to an edge are held there for
 * it. Exact as far as the curves are straight in the constants over a few standard errors.
 */
final class BoundedFit {
    private static final int MOST = 200;
    private static final double TOLERANCE = 1e-9;
    /** Least distance of the start from the middle of the band. */
    private static final double LEAST_START = 0.1;
    /** Step of the differences, as a share of the band. */
    private static final double STEP = 1e-3;
    /** What share of the band from its edge counts as the edge. */
    private static final double EDGE = 1e-3;

    private BoundedFit() {}

    /**
     * What was found.
     *
     * @param values the constants
     * @param atEdge which of them came to an edge
     * @param covariance of the values
     * @param scatter standard deviation of a residual
     */
    record Found(double[] values, boolean[] atEdge, double[][] covariance, double scatter) {}

    static Found of(FitModel model, List<AlloyConstant> constants) {
        int p = constants.size();
        double[] start = new double[p];
        for (int k = 0; k < p; k++) {
            AlloyConstant constant = constants.get(k);
            double width = constant.band().high() - constant.band().low();
            double share = (constant.value() - constant.band().low()) / width;
            double begin = Math.asin(Math.max(-0.9, Math.min(0.9, 2 * share - 1)));
            // the optimiser's first step is in proportion to u: from the middle of a band it would not move at all
            start[k] = Math.abs(begin) < LEAST_START ? LEAST_START : begin;
        }
        double[] target = model.measured();
        LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(start)
                        .target(target)
                        .model(point -> at(model, constants, point.toArray()))
                        .maxEvaluations(MOST)
                        .maxIterations(MOST)
                        .checkerPair(new SimpleVectorValueChecker(TOLERANCE, TOLERANCE))
                        .build());
        double[] u = optimum.getPoint().toArray();
        double[] values = new double[p];
        boolean[] atEdge = new boolean[p];
        List<Integer> free = new ArrayList<>();
        for (int k = 0; k < p; k++) {
            values[k] = value(constants.get(k), u[k]);
            double share = (1 + Math.sin(u[k])) / 2;
            atEdge[k] = share < EDGE || share > 1 - EDGE;
            if (!atEdge[k]) {
                free.add(k);
            }
        }
        double squares = optimum.getCost() * optimum.getCost();
        double variance = squares / (target.length - free.size());
        return new Found(values, atEdge, covariance(model, constants, values, free, variance), Math.sqrt(variance));
    }

    private static double value(AlloyConstant constant, double u) {
        double low = constant.band().low();
        return low + (constant.band().high() - low) * (1 + Math.sin(u)) / 2;
    }

    /** Values and derivatives by u; the derivatives by the values are taken well inside the band, u being flat at its edge. */
    private static Pair<RealVector, RealMatrix> at(FitModel model, List<AlloyConstant> constants, double[] u) {
        double[] values = new double[u.length];
        for (int k = 0; k < u.length; k++) {
            values[k] = value(constants.get(k), u[k]);
        }
        double[] here = model.computed(values);
        RealMatrix byValue = derivatives(model, constants, values, here);
        for (int k = 0; k < u.length; k++) {
            double width =
                    constants.get(k).band().high() - constants.get(k).band().low();
            double slope = width * Math.cos(u[k]) / 2;
            byValue.setColumnVector(k, byValue.getColumnVector(k).mapMultiply(slope));
        }
        return new Pair<>(new ArrayRealVector(here, false), byValue);
    }

    private static RealMatrix derivatives(
            FitModel model, List<AlloyConstant> constants, double[] values, double[] here) {
        RealMatrix derivatives = new Array2DRowRealMatrix(here.length, values.length);
        for (int k = 0; k < values.length; k++) {
            AlloyConstant constant = constants.get(k);
            double width = constant.band().high() - constant.band().low();
            double step = values[k] + STEP * width <= constant.band().high() ? STEP * width : -STEP * width;
            double[] moved = values.clone();
            moved[k] += step;
            double[] there = model.computed(moved);
            for (int i = 0; i < here.length; i++) {
                derivatives.setEntry(i, k, (there[i] - here[i]) / step);
            }
        }
        return derivatives;
    }

    private static double[][] covariance(
            FitModel model, List<AlloyConstant> constants, double[] values, List<Integer> free, double variance) {
        double[][] all = new double[values.length][values.length];
        if (free.isEmpty()) {
            return all;
        }
        RealMatrix whole = derivatives(model, constants, values, model.computed(values));
        RealMatrix some = new Array2DRowRealMatrix(whole.getRowDimension(), free.size());
        double[] scale = new double[free.size()];
        for (int k = 0; k < free.size(); k++) {
            // in widths of the bands, so that constants of any size are inverted alike
            AlloyConstant constant = constants.get(free.get(k));
            scale[k] = constant.band().high() - constant.band().low();
            some.setColumnVector(k, whole.getColumnVector(free.get(k)).mapMultiply(scale[k]));
        }
        RealMatrix inverse = new LUDecomposition(some.transpose().multiply(some), 1e-12)
                .getSolver()
                .getInverse();
        for (int a = 0; a < free.size(); a++) {
            for (int b = 0; b < free.size(); b++) {
                all[free.get(a)][free.get(b)] = variance * inverse.getEntry(a, b) * scale[a] * scale[b];
            }
        }
        return all;
    }
}
