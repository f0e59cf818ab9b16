package org.taperwright.validation.interior;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.RealVector;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.placement.Setting;
import org.taperwright.shaping.placement.WallSupport;

/**
 * A rod of one diameter and stiffness in a rigid wall, by an interior point: the bending energy from places in space, less
 * {@code mu sum log(gap - u.n)}, with mu falling to nothing. Slopes and matrix are differences of cell energies; the matrix is
 * shifted until it is positive definite and solved by the dense decomposition of Commons Math.
 */
public final class BarrierPlacement {
    private static final double STEP = 1e-5;
    private static final int MOST_STEPS = 60;

    private final int nodes;
    private final double spacing;
    private final WallSupport support;
    private final double radius;
    private final CellEnergy[] cells;
    private final double[][] wall;
    private final double[] ghost = new double[2];
    private double[] u;
    private double barrier = 1e-2;

    /** A rod from the handle to the tip. */
    public BarrierPlacement(
            Centreline line,
            WallSupport support,
            Setting setting,
            double lengthMm,
            double spacingMm,
            double radiusMm,
            DoubleUnaryOperator energyOfCurvature) {
        nodes = (int) Math.round(lengthMm / spacingMm) + 1;
        spacing = spacingMm;
        this.support = support;
        radius = radiusMm;
        u = new double[2 * nodes];
        ghost[0] = -2 * spacing * setting.tiltFirst();
        ghost[1] = -2 * spacing * setting.tiltSecond();
        cells = new CellEnergy[nodes - 1];
        wall = new double[nodes][support.directions().count()];
        for (int i = 0; i < nodes; i++) {
            double depth = setting.tipDepthMm() - lengthMm + i * spacing;
            support.at(depth, wall[i], 0);
            if (i < nodes - 1) {
                double weight = i == 0 ? spacing / 2 : spacing;
                cells[i] = new CellEnergy(line, depth, spacing, weight, energyOfCurvature);
            }
        }
    }

    /** Lets the barrier fall to a last value, by a factor at a time. */
    public void solve(double last) {
        for (; barrier >= last; barrier *= 0.2) {
            double move = 1;
            for (int i = 0; i < MOST_STEPS && move > 1e-8; i++) {
                move = step();
            }
        }
        barrier /= 0.2;
    }

    /** Bending energy, mJ. */
    public double energyMj() {
        return energy(u);
    }

    /** Greatest curvature, 1/mm. */
    public double greatestCurvature() {
        double most = 0;
        for (int i = 0; i < cells.length; i++) {
            most = Math.max(most, cells[i].curvature(local(i, u)));
        }
        return most;
    }

    /** Sum of the sizes of the forces of the nodes on the wall: {@code |sum mu n / (gap - u.n)|}, N. */
    public double totalForceN() {
        double sum = 0;
        for (int i = 1; i < nodes; i++) {
            double first = 0;
            double second = 0;
            for (int k = 0; k < wall[i].length; k++) {
                double force = barrier / room(i, k, u);
                first += force * support.directions().cos(k);
                second += force * support.directions().sin(k);
            }
            sum += Math.hypot(first, second);
        }
        return sum;
    }

    private double room(int i, int k, double[] at) {
        return wall[i][k]
                - radius
                - at[2 * i] * support.directions().cos(k)
                - at[2 * i + 1] * support.directions().sin(k);
    }

    private double[] local(int i, double[] at) {
        double[] local = new double[6];
        for (int j = 0; j < 6; j++) {
            int index = 2 * (i - 1) + j;
            local[j] = index < 0 ? at[2 + j] + ghost[j] : at[index];
        }
        return local;
    }

    private double energy(double[] at) {
        double sum = 0;
        for (int i = 0; i < cells.length; i++) {
            sum += cells[i].at(local(i, at));
        }
        return sum;
    }

    /** Energy with the barrier; infinite outside the wall. */
    private double merit(double[] at) {
        double sum = energy(at);
        for (int i = 1; i < nodes; i++) {
            for (int k = 0; k < wall[i].length; k++) {
                double room = room(i, k, at);
                if (room <= 0) {
                    return Double.POSITIVE_INFINITY;
                }
                sum -= barrier * Math.log(room);
            }
        }
        return sum;
    }

    private double step() {
        int unknowns = 2 * (nodes - 1);
        double[][] matrix = new double[unknowns][unknowns];
        double[] slope = new double[unknowns];
        bend(matrix, slope);
        push(matrix, slope);
        RealVector step = solved(matrix, slope);
        double fall = step.dotProduct(new ArrayRealVector(slope));
        double before = merit(u);
        double length = 1;
        double[] trial = moved(step, length);
        while (length > 1e-12 && !(merit(trial) <= before - 1e-4 * length * fall)) {
            length /= 2;
            trial = moved(step, length);
        }
        u = length > 1e-12 ? trial : u;
        return length > 1e-12 ? length * step.getLInfNorm() : 0;
    }

    private double[] moved(RealVector step, double length) {
        double[] trial = u.clone();
        for (int j = 0; j < step.getDimension(); j++) {
            trial[j + 2] -= length * step.getEntry(j);
        }
        return trial;
    }

    private static RealVector solved(double[][] matrix, double[] slope) {
        double shift = 0;
        while (true) {
            try {
                Array2DRowRealMatrix shifted = new Array2DRowRealMatrix(matrix, true);
                for (int j = 0; j < slope.length; j++) {
                    shifted.addToEntry(j, j, shift);
                }
                return new CholeskyDecomposition(shifted, 1e-6, 1e-12)
                        .getSolver()
                        .solve(new ArrayRealVector(slope));
            } catch (NonPositiveDefiniteMatrixException indefinite) {
                shift = shift == 0 ? 1 : 10 * shift;
            }
        }
    }

    /** What the barrier adds. */
    private void push(double[][] matrix, double[] slope) {
        for (int i = 1; i < nodes; i++) {
            int row = 2 * (i - 1);
            for (int k = 0; k < wall[i].length; k++) {
                double c = support.directions().cos(k);
                double s = support.directions().sin(k);
                double force = barrier / room(i, k, u);
                double stiffness = force * force / barrier;
                slope[row] += force * c;
                slope[row + 1] += force * s;
                matrix[row][row] += stiffness * c * c;
                matrix[row][row + 1] += stiffness * c * s;
                matrix[row + 1][row] += stiffness * c * s;
                matrix[row + 1][row + 1] += stiffness * s * s;
            }
        }
    }

    /** What bending adds: central differences of each cell by its unknowns. */
    private void bend(double[][] matrix, double[] slope) {
        for (int i = 0; i < cells.length; i++) {
            int first = Math.max(2, 2 * (i - 1));
            int last = 2 * (i + 1) + 1;
            for (int a = first; a <= last; a++) {
                slope[a - 2] += (cell(i, a, STEP, a, 0) - cell(i, a, -STEP, a, 0)) / (2 * STEP);
                for (int b = first; b <= a; b++) {
                    double mixed = cell(i, a, STEP, b, STEP)
                            - cell(i, a, STEP, b, -STEP)
                            - cell(i, a, -STEP, b, STEP)
                            + cell(i, a, -STEP, b, -STEP);
                    double second = mixed / (4 * STEP * STEP);
                    matrix[a - 2][b - 2] += second;
                    matrix[b - 2][a - 2] += a == b ? 0 : second;
                }
            }
        }
    }

    private double cell(int i, int a, double stepA, int b, double stepB) {
        double keptA = u[a];
        double keptB = u[b];
        u[a] += stepA;
        u[b] += stepB;
        double energy = cells[i].at(local(i, u));
        u[b] = keptB;
        u[a] = keptA;
        return energy;
    }
}
