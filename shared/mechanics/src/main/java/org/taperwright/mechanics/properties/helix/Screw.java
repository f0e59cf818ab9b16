package org.taperwright.mechanics.properties.helix;

import java.util.Arrays;
import org.taperwright.mechanics.properties.mesh.SectionMesh;
import org.taperwright.mechanics.properties.solve.EnvelopeCholesky;
import org.taperwright.mechanics.properties.solve.Equations;

/**
 * The equations of the twisted bar for one harmonic, about a twist a. Rigid motions are held at two nodes: what they
 * would do is in the macroscopic strains.
 */
final class Screw {
    /** Macroscopic strains: extension, curvatures g = X and g = Y, twist. */
    static final int MACROS = 4;

    private final Equations equations;
    private final boolean complex;
    private final ElementPencil[] pencils;
    private final int[][] rows;
    /** {@code int B^H C E_j} for each macroscopic strain j: at the twist a, and its derivative by the twist. */
    private final Field[] load = new Field[MACROS];

    private final Field[] loadSlope = new Field[MACROS];
    /** {@code int E_i C E_j}. */
    private final double[][] macro = new double[MACROS][MACROS];

    /** A vector and what the three parts of the pencil make of it. */
    record Image(Field vector, Field value, Field slope, Field bend) {}

    Screw(
            SectionMesh mesh,
            ElementIntegrals[] integrals,
            Equations equations,
            double poisson,
            int harmonic,
            double twist) {
        this.equations = equations;
        complex = harmonic > 0;
        double mu = 1 / (2 * (1 + poisson));
        double lambda = 2 * mu * poisson / (1 - 2 * poisson);
        pencils = new ElementPencil[integrals.length];
        rows = new int[integrals.length][];
        for (int j = 0; j < MACROS; j++) {
            load[j] = Field.zero(equations.count(), complex);
            loadSlope[j] = Field.zero(equations.count(), complex);
        }
        for (int e = 0; e < integrals.length; e++) {
            pencils[e] = new ElementPencil(integrals[e], lambda, mu, harmonic, twist);
            rows[e] = equations.ofElement(e);
            addLoads(integrals[e], rows[e], lambda, mu, harmonic);
            addMacro(integrals[e].moments, lambda + 2 * mu, mu);
        }
        for (int j = 0; j < MACROS; j++) {
            load[j].add(twist, 0, loadSlope[j]);
        }
    }

    private void addLoads(ElementIntegrals s, int[] row, double lambda, double mu, int harmonic) {
        double stiff = lambda + 2 * mu;
        for (int a = 0; a < ElementIntegrals.N; a++) {
            int u = row[3 * a];
            int v = row[3 * a + 1];
            int w = row[3 * a + 2];
            for (int k = 0; k < 3; k++) {
                put(load[k], u, lambda * s.gx[k][a], 0);
                put(load[k], v, lambda * s.gy[k][a], 0);
                put(loadSlope[k], w, stiff * s.gr[k][a], -harmonic * stiff * s.gn[k][a]);
            }
            put(load[3], w, -mu * s.gr[0][a], 0);
            put(loadSlope[3], u, mu * (s.gn[1][a] - s.gr[2][a]), harmonic * mu * s.gn[2][a]);
            put(loadSlope[3], v, mu * (s.gn[2][a] + s.gr[1][a]), -harmonic * mu * s.gn[1][a]);
        }
    }

    private void put(Field vector, int row, double re, double im) {
        if (row >= 0) {
            vector.re()[row] += re;
            if (complex) {
                vector.im()[row] += im;
            }
        }
    }

    private void addMacro(double[] moments, double stiff, double mu) {
        int[][] of = {{0, 1, 2}, {1, 3, 4}, {2, 4, 5}};
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                macro[i][j] += stiff * moments[of[i][j]];
            }
        }
        macro[3][3] += mu * (moments[3] + moments[5]);
    }

    boolean complex() {
        return complex;
    }

    int size() {
        return equations.count();
    }

    Field load(int j) {
        return load[j];
    }

    Field loadSlope(int j) {
        return loadSlope[j];
    }

    /** {@code int E_i C E_j}; read only. */
    double[][] macro() {
        return macro;
    }

    /** The stiffness at the twist a. */
    EnvelopeCholesky matrix() {
        EnvelopeCholesky matrix = equations.matrix(complex);
        for (int e = 0; e < pencils.length; e++) {
            double[] re = pencils[e].value.re();
            double[] im = pencils[e].value.im();
            for (int j = 0; j < ElementPencil.SIZE; j++) {
                int col = rows[e][j];
                for (int i = 0; col >= 0 && i < ElementPencil.SIZE; i++) {
                    int row = rows[e][i];
                    if (row >= col) {
                        int at = ElementPencil.SIZE * j + i;
                        matrix.add(row, col, re[at], complex ? im[at] : 0);
                    }
                }
            }
        }
        return matrix;
    }

    /** What the pencil makes of a vector. */
    Image image(Field vector) {
        Field value = Field.zero(size(), complex);
        Field slope = Field.zero(size(), complex);
        Field bend = Field.zero(size(), complex);
        Field x = Field.zero(ElementPencil.SIZE, complex);
        Field y = Field.zero(ElementPencil.SIZE, complex);
        for (int e = 0; e < pencils.length; e++) {
            gather(vector, rows[e], x);
            addProduct(pencils[e].value, x, y, rows[e], value);
            addProduct(pencils[e].slope, x, y, rows[e], slope);
            addProduct(pencils[e].bend, x, y, rows[e], bend);
        }
        return new Image(vector, value, slope, bend);
    }

    private static void gather(Field vector, int[] rows, Field x) {
        for (int i = 0; i < rows.length; i++) {
            x.re()[i] = rows[i] < 0 ? 0 : vector.re()[rows[i]];
            if (x.complex()) {
                x.im()[i] = rows[i] < 0 ? 0 : vector.im(rows[i]);
            }
        }
    }

    private static void addProduct(Field matrix, Field x, Field y, int[] rows, Field sum) {
        Arrays.fill(y.re(), 0);
        Arrays.fill(y.im(), 0);
        ElementPencil.multiply(matrix, x, y);
        for (int i = 0; i < rows.length; i++) {
            if (rows[i] >= 0) {
                sum.re()[rows[i]] += y.re()[i];
                if (sum.complex()) {
                    sum.im()[rows[i]] += y.im()[i];
                }
            }
        }
    }
}
