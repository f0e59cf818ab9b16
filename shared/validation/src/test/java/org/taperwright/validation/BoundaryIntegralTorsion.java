package org.taperwright.validation;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Segment;

/**
 * The torsion constant by another way than the engine's: a boundary integral equation without any mesh of the inside.
 * With {@code phi = w - r^2 / 2}, w is harmonic and equals {@code r^2 / 2} on the outline. Green's identity at the middle
 * of every chord of the outline, with w and its flux g constant on each,
 *
 * <pre>sum_j g_j int_j ln(1/rho) ds = pi w_i - sum_j w_j (angle that chord j spans as seen from i)</pre>
 *
 * gives g; then {@code J = 2 int w dA - Ip} with {@code int w dA = oint (w x.n / 2 - w g / 2) ds}. Chords and constants
 * leave an error of second order, so two numbers of elements are extrapolated. Source: M. A. Jaswon and G. T. Symm,
 * Integral Equation Methods in Potential Theory and Elastostatics (1977), from memory.
 */
final class BoundaryIntegralTorsion {
    private final List<Point> corners = new ArrayList<>();

    private BoundaryIntegralTorsion(Outline outline, int elements) {
        double length = outline.segments().stream().mapToDouble(Segment::length).sum();
        for (Segment segment : outline.segments()) {
            int parts = Math.max(elements / 20, (int) Math.round(elements * segment.length() / length));
            for (int k = 0; k < parts; k++) {
                // closer together at both ends, where the flux bends most
                corners.add(segment.at((1 - Math.cos(Math.PI * k / parts)) / 2));
            }
        }
    }

    /** J of an outline, from about this many elements and twice as many. */
    static double of(Outline outline, int elements) {
        double coarse = new BoundaryIntegralTorsion(outline, elements).constant();
        double fine = new BoundaryIntegralTorsion(outline, 2 * elements).constant();
        return fine + (fine - coarse) / 3;
    }

    private double constant() {
        int n = corners.size();
        double[] flux = flux();
        double volume = 0;
        double polar = 0;
        for (int j = 0; j < n; j++) {
            Point from = corners.get(j);
            Point to = end(j);
            double outward = middle(j).cross(to.minus(from));
            volume += w(j) * (outward - flux[j] * from.distanceTo(to)) / 2;
            polar += from.cross(to) * (from.dot(from) + from.dot(to) + to.dot(to)) / 12;
        }
        return 2 * volume - polar;
    }

    private double[] flux() {
        int n = corners.size();
        double[][] logarithms = new double[n][n];
        double[] right = new double[n];
        for (int i = 0; i < n; i++) {
            right[i] = Math.PI * w(i);
            for (int j = 0; j < n; j++) {
                Point from = corners.get(j).minus(middle(i));
                Point to = end(j).minus(middle(i));
                logarithms[i][j] = logarithm(from, to);
                if (i != j) {
                    right[i] -= w(j) * Math.atan2(from.cross(to), from.dot(to));
                }
            }
        }
        return new LUDecomposition(new Array2DRowRealMatrix(logarithms, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }

    /** {@code int ln(1/rho) ds} along a chord, seen from the origin. */
    private static double logarithm(Point from, Point to) {
        Point along = to.minus(from).times(1 / from.distanceTo(to));
        double aside = along.cross(from);
        return antiderivative(from.dot(along), aside) - antiderivative(to.dot(along), aside);
    }

    private static double antiderivative(double t, double aside) {
        double bend = Math.abs(aside) < 1e-14 ? 0 : aside * Math.atan(t / aside);
        return t * Math.log(Math.hypot(t, aside)) - t + bend;
    }

    private Point end(int j) {
        return corners.get((j + 1) % corners.size());
    }

    private Point middle(int j) {
        return corners.get(j).plus(end(j)).times(0.5);
    }

    private double w(int j) {
        return middle(j).dot(middle(j)) / 2;
    }
}
