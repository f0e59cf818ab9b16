package org.taperwright.mechanics.properties.torsion;

import java.util.Arrays;
import org.taperwright.mechanics.properties.mesh.CubicTriangle;
import org.taperwright.mechanics.properties.mesh.ElementMap;
import org.taperwright.mechanics.properties.mesh.SectionMesh;

/**
 * Stiffness {@code int grad N_a . grad N_b} and load {@code int 2 N_a} of one element. Reused from element to element; not
 * safe for use by two threads.
 */
final class LaplaceElement {
    private static final int N = CubicTriangle.NODES;

    private final double[] matrix = new double[N * N];
    private final double[] load = new double[N];
    private final ElementMap map = new ElementMap();
    private double area;

    /** An entry of the stiffness, a not below b. */
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

    /** A row of the stiffness times nodal values. */
    double times(int a, int[] nodes, double[] values) {
        double sum = 0;
        for (int b = 0; b < N; b++) {
            sum += values[nodes[b]] * matrix[Math.max(a, b) * N + Math.min(a, b)];
        }
        return sum;
    }

    /** Integrates over an element. */
    void integrate(SectionMesh mesh, int e) {
        Arrays.fill(matrix, 0);
        Arrays.fill(load, 0);
        area = 0;
        double[] gx = map.gradientX();
        double[] gy = map.gradientY();
        for (int q = 0; q < CubicTriangle.POINTS; q++) {
            map.moveTo(mesh, e, q);
            double weight = map.weight();
            double[] value = CubicTriangle.value(q);
            area += weight;
            for (int a = 0; a < N; a++) {
                load[a] += 2 * weight * value[a];
                double sx = weight * gx[a];
                double sy = weight * gy[a];
                for (int b = 0; b <= a; b++) {
                    matrix[a * N + b] += sx * gx[b] + sy * gy[b];
                }
            }
        }
    }
}
