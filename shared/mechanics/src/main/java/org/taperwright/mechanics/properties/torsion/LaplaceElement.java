package org.taperwright.mechanics.properties.torsion;

import org.taperwright.mechanics.properties.mesh.CubicTriangle;
import org.taperwright.mechanics.properties.mesh.SectionMesh;

/**
 * Stiffness {@code int grad N_a . grad N_b} and load {@code int 2 N_a} of one element, with the inner node eliminated.
 * Reused from element to element; not safe for use by two threads.
 */
final class LaplaceElement {
    private static final int N = CubicTriangle.NODES;

    private final double[] matrix = new double[N * N];
    private final double[] load = new double[N];
    private double area;

    double stiffness(int a, int b) {
        return matrix[a * N + b];
    }

    double load(int a) {
        return load[a];
    }

    /** The element's area. */
    double area() {
        return area;
    }

    /** A row of the matrix times nodal values; before {@link #condense}. */
    double times(int a, int[] nodes, double[] values) {
        double sum = 0;
        for (int b = 0; b < N; b++) {
            sum += values[nodes[b]] * matrix[Math.max(a, b) * N + Math.min(a, b)];
        }
        return sum;
    }

    /** Integrates over an element. */
    void form(SectionMesh mesh, int e) {
        java.util.Arrays.fill(matrix, 0);
        java.util.Arrays.fill(load, 0);
        area = 0;
        int[] nodes = mesh.element(e);
        double[] gx = new double[N];
        double[] gy = new double[N];
        for (int q = 0; q < CubicTriangle.POINTS; q++) {
            double[] byXi = CubicTriangle.byXi(q);
            double[] byEta = CubicTriangle.byEta(q);
            double xXi = 0;
            double xEta = 0;
            double yXi = 0;
            double yEta = 0;
            for (int a = 0; a < N; a++) {
                double px = mesh.x(nodes[a]);
                double py = mesh.y(nodes[a]);
                xXi += byXi[a] * px;
                xEta += byEta[a] * px;
                yXi += byXi[a] * py;
                yEta += byEta[a] * py;
            }
            double det = xXi * yEta - xEta * yXi;
            double weight = CubicTriangle.weight(q);
            area += weight * det;
            double scale = weight / det;
            double[] value = CubicTriangle.value(q);
            for (int a = 0; a < N; a++) {
                gx[a] = byXi[a] * yEta - byEta[a] * yXi;
                gy[a] = byEta[a] * xXi - byXi[a] * xEta;
                load[a] += 2 * weight * det * value[a];
                double sx = scale * gx[a];
                double sy = scale * gy[a];
                for (int b = 0; b <= a; b++) {
                    matrix[a * N + b] += sx * gx[b] + sy * gy[b];
                }
            }
        }
    }

    /** Eliminates the inner node; its own share of {@code f . phi}. */
    double condense() {
        double pivot = matrix[9 * N + 9];
        for (int a = 0; a < 9; a++) {
            double factor = matrix[9 * N + a] / pivot;
            load[a] -= factor * load[9];
            for (int b = 0; b <= a; b++) {
                matrix[a * N + b] -= factor * matrix[9 * N + b];
            }
        }
        return load[9] * load[9] / pivot;
    }

    /** What gives the inner node back: {@code phi_9 = row[9] - sum row[a] phi_a}. */
    double[] innerRow() {
        double[] row = new double[N];
        double pivot = matrix[9 * N + 9];
        for (int a = 0; a < 9; a++) {
            row[a] = matrix[9 * N + a] / pivot;
        }
        row[9] = load[9] / pivot;
        return row;
    }
}
