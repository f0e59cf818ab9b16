package org.taperwright.shaping.canal.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ParameterValidator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.canal.Vector;

/**
 * Smooths points along a canal by the straight part, arc and straight part whose distances from the points, in the plane
 * nearest to them, have the least sum of squares. Positions are fitted, not directions: differences of noisy neighbours
 * say little of the radius. Validity: one bend; a canal that bends twice, or out of one plane, shows in the distances left.
 */
public final class PositionFit {
    private static final int FEWEST_POINTS = 8;
    private static final int MOST_STEPS = 400;
    private static final double SHORTEST_ARC_MM = 0.05;
    private static final double STEP = 1e-6;
    /** Shares of the length at which a trial arc begins and over which it runs. */
    private static final double[] BEGINS = {0.1, 0.25, 0.4, 0.55, 0.7};

    private static final double[] RUNS = {0.1, 0.25, 0.45};
    private static final int TRIALS_REFINED = 3;

    private final List<double[]> points = new ArrayList<>();
    private final FitPlane plane;

    private PositionFit(List<Vector> given) {
        plane = FitPlane.of(given);
        given.forEach(point -> points.add(plane.inPlane(point)));
    }

    /** What keeps points, given from the orifice to the end, from being smoothed. */
    public static List<Fault> faults(List<Vector> points) {
        List<Fault> faults = new ArrayList<>();
        if (points.size() < FEWEST_POINTS) {
            faults.add(Fault.impossible(
                    "points", "there are " + points.size() + " points", "expected at least " + FEWEST_POINTS));
        }
        for (int i = 0; i < points.size(); i++) {
            Vector point = points.get(i);
            if (!Double.isFinite(point.length())) {
                faults.add(Fault.impossible("points[" + i + "]", "a coordinate is not a number", "expected mm"));
            } else if (i > 0 && point.minus(points.get(i - 1)).length() == 0) {
                faults.add(Fault.impossible(
                        "points[" + i + "]", "the point is the one before it", "expected points that go on"));
            }
        }
        return faults;
    }

    /**
     * The fitted pieces; empty where no trial settles, which means that the points lie along no such line.
     *
     * @throws IllegalArgumentException for points that {@link #faults} finds something in
     */
    public static Optional<FittedCentreline> of(List<Vector> points) {
        List<Fault> faults = faults(points);
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(faults.get(0).sentence());
        }
        return new PositionFit(points).fitted();
    }

    private Optional<FittedCentreline> fitted() {
        List<LineArcLine> trials = trials();
        trials.sort(java.util.Comparator.comparingDouble(this::squares));
        Optional<LineArcLine> best = Optional.empty();
        for (LineArcLine trial : trials.subList(0, TRIALS_REFINED)) {
            Optional<LineArcLine> refined = refined(trial);
            if (refined.isPresent() && (best.isEmpty() || squares(refined.get()) < squares(best.get()))) {
                best = refined;
            }
        }
        return best.map(curve ->
                FittedCentreline.of(curve, points, Math.sqrt(squares(curve) / points.size()), plane.flatnessMm()));
    }

    /** Arcs of several beginnings and lengths, between the directions of the first and last points. */
    private List<LineArcLine> trials() {
        int reach = Math.max(2, points.size() / 8);
        double first = heading(0, reach);
        double last = heading(points.size() - 1 - reach, points.size() - 1);
        double turn = Math.IEEEremainder(last - first, 2 * Math.PI);
        double length = 0;
        for (int i = 1; i < points.size(); i++) {
            length += Math.hypot(points.get(i)[0] - points.get(i - 1)[0], points.get(i)[1] - points.get(i - 1)[1]);
        }
        List<LineArcLine> trials = new ArrayList<>();
        for (double begin : BEGINS) {
            for (double run : RUNS) {
                double x = points.get(0)[0] + begin * length * Math.cos(first);
                double y = points.get(0)[1] + begin * length * Math.sin(first);
                trials.add(new LineArcLine(x, y, first, turn, run * length));
            }
        }
        return trials;
    }

    private double heading(int from, int to) {
        return Math.atan2(points.get(to)[1] - points.get(from)[1], points.get(to)[0] - points.get(from)[0]);
    }

    private double squares(LineArcLine curve) {
        double sum = 0;
        for (double[] point : points) {
            double distance = curve.distance(point[0], point[1]);
            sum += distance * distance;
        }
        return sum;
    }

    private Optional<LineArcLine> refined(LineArcLine trial) {
        LeastSquaresProblem problem = new LeastSquaresBuilder()
                .start(trial.parameters())
                .target(new double[points.size()])
                .model(this::distancesWithSlopes)
                .parameterValidator(longEnough())
                .maxEvaluations(MOST_STEPS)
                .maxIterations(MOST_STEPS)
                .build();
        try {
            RealVector found = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-14)
                    .withParameterRelativeTolerance(1e-12)
                    .optimize(problem)
                    .getPoint();
            return Optional.of(LineArcLine.of(found.toArray()));
        } catch (TooManyEvaluationsException | TooManyIterationsException | ConvergenceException unsettled) {
            return Optional.empty();
        }
    }

    private static ParameterValidator longEnough() {
        return parameters -> {
            RealVector mended = parameters.copy();
            mended.setEntry(4, Math.max(SHORTEST_ARC_MM, mended.getEntry(4)));
            return mended;
        };
    }

    private Pair<RealVector, RealMatrix> distancesWithSlopes(RealVector at) {
        double[] parameters = at.toArray();
        RealMatrix slopes = new Array2DRowRealMatrix(points.size(), parameters.length);
        for (int p = 0; p < parameters.length; p++) {
            double[] more = parameters.clone();
            double[] less = parameters.clone();
            more[p] += STEP;
            less[p] -= STEP;
            double[] above = distances(LineArcLine.of(more));
            double[] below = distances(LineArcLine.of(less));
            for (int i = 0; i < above.length; i++) {
                slopes.setEntry(i, p, (above[i] - below[i]) / (2 * STEP));
            }
        }
        return new Pair<>(new ArrayRealVector(distances(LineArcLine.of(parameters))), slopes);
    }

    private double[] distances(LineArcLine curve) {
        return points.stream()
                .mapToDouble(point -> curve.distance(point[0], point[1]))
                .toArray();
    }
}
