package org.taperwright.shaping.canal.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.taperwright.shaping.canal.Vector;

/**
 * Smooths points along a canal, in a plane or in space, by a straight part and up to {@value #MOST_BENDS} bends, each an arc towards any
 * side with a straight part behind it, whose distances from the points have the least sum of squares. How many bends there are is
 * decided by the Bayesian information criterion {@code n ln(S / n) + p ln n} of n coordinates and p parameters (Schwarz, Ann Stat
 * 1978;6:461), deviations below {@value #NOTHING_MM} mm being taken for none. Positions are fitted, not directions: differences of
 * noisy neighbours say little of a radius.
 */
public final class BendsFit {
    /** Most bends that are looked for. */
    public static final int MOST_BENDS = 4;

    private static final double NOTHING_MM = 0.002;
    private static final int MOST_STEPS = 400;
    private static final int REFINED = 6;
    private static final double STEP = 1e-6;
    /** Places of trial bends, as shares of the length, and over which share each runs. */
    private static final double[] PLACES = {0.12, 0.27, 0.42, 0.57, 0.72, 0.87};

    private static final double RUN = 0.12;

    private final List<Vector> points;
    private final BendChain.Base base;

    private record Weighed(BendChain chain, double squares) {}

    private BendsFit(List<Vector> points) {
        this.points = List.copyOf(points);
        base = BendChain.Base.of(points);
    }

    /**
     * The fitted pieces; empty where no trial settles.
     *
     * @param points from the orifice to the end, in which {@link PositionFit#faults} finds nothing
     */
    public static Optional<FittedBends> of(List<Vector> points) {
        return new BendsFit(points).fitted();
    }

    private Optional<FittedBends> fitted() {
        Optional<BendChain> best = Optional.empty();
        Optional<BendChain> found = Optional.empty();
        double bestCriterion = Double.MAX_VALUE;
        for (int bends = 0; bends <= MOST_BENDS; bends++) {
            found = best(bends, found);
            double criterion = found.map(this::criterion).orElse(Double.MAX_VALUE);
            if (criterion < bestCriterion) {
                best = found;
                bestCriterion = criterion;
            } else if (bends > 1) {
                break;
            }
            if (found.filter(chain -> squares(chain) < NOTHING_MM * NOTHING_MM * points.size())
                    .isPresent()) {
                break;
            }
        }
        return best.map(chain -> new FittedBends(
                chain.pieces(points),
                Math.sqrt(squares(chain) / points.size()),
                FitPlane.of(points).flatnessMm(),
                chain.depthsMm(points)));
    }

    private double criterion(BendChain chain) {
        double count = 2.0 * points.size();
        double variance = Math.max(squares(chain) / count, NOTHING_MM * NOTHING_MM);
        return count * Math.log(variance) + chain.parameters().length * Math.log(count);
    }

    private double squares(BendChain chain) {
        double sum = 0;
        for (double distance : chain.distances(points)) {
            sum += distance * distance;
        }
        return sum;
    }

    /** The best of a number of bends, from choices of places and from the best of one less with one more anywhere. */
    private Optional<BendChain> best(int bends, Optional<BendChain> fewer) {
        if (4 + 4 * bends >= points.size()) {
            return Optional.empty();
        }
        Stream<BendChain> chosen = trials(bends).stream()
                .map(trial -> new Weighed(trial, squares(trial)))
                .sorted(Comparator.comparingDouble(Weighed::squares))
                .limit(REFINED)
                .map(Weighed::chain);
        Stream<BendChain> nested = fewer.stream()
                .flatMap(chain -> Arrays.stream(PLACES)
                        .boxed()
                        .flatMap(place ->
                                chain.with((place - RUN / 2) * base.lengthMm(), RUN * base.lengthMm()).stream()));
        return Stream.concat(chosen, nested)
                .flatMap(trial -> refined(trial).stream())
                .map(chain -> new Weighed(chain, squares(chain)))
                .min(Comparator.comparingDouble(Weighed::squares))
                .map(Weighed::chain);
    }

    /** Bends at each choice of places, turning so as to come nearest to the points. */
    private List<BendChain> trials(int bends) {
        List<BendChain> trials = new ArrayList<>();
        for (int chosen = 0; chosen < 1 << PLACES.length; chosen++) {
            if (Integer.bitCount(chosen) == bends) {
                double[] begins = new double[bends];
                int at = 0;
                for (int i = 0; i < PLACES.length; i++) {
                    if ((chosen >> i & 1) == 1) {
                        begins[at++] = (PLACES[i] - RUN / 2) * base.lengthMm();
                    }
                }
                trials.add(base.trial(begins, RUN * base.lengthMm(), points));
            }
        }
        return trials;
    }

    private Optional<BendChain> refined(BendChain trial) {
        try {
            RealVector found = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-9)
                    .withParameterRelativeTolerance(1e-8)
                    .optimize(new LeastSquaresBuilder()
                            .start(trial.parameters())
                            .target(new double[2 * points.size()])
                            .model(this::distancesWithSlopes)
                            .parameterValidator(BendChain::mended)
                            .maxEvaluations(MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .build())
                    .getPoint();
            return Optional.of(new BendChain(base, found.toArray()));
        } catch (TooManyEvaluationsException | TooManyIterationsException | ConvergenceException unsettled) {
            return Optional.empty();
        }
    }

    private Pair<RealVector, RealMatrix> distancesWithSlopes(RealVector at) {
        double[] parameters = at.toArray();
        RealMatrix slopes = new Array2DRowRealMatrix(2 * points.size(), parameters.length);
        for (int p = 0; p < parameters.length; p++) {
            double[] more = parameters.clone();
            double[] less = parameters.clone();
            more[p] += STEP;
            less[p] -= STEP;
            double[] above = new BendChain(base, more).distances(points);
            double[] below = new BendChain(base, less).distances(points);
            for (int i = 0; i < above.length; i++) {
                slopes.setEntry(i, p, (above[i] - below[i]) / (2 * STEP));
            }
        }
        return new Pair<>(new ArrayRealVector(new BendChain(base, parameters).distances(points)), slopes);
    }
}
