package org.taperwright.mechanics.properties.helix;

/**
 * The stiffness of one element for one harmonic as a polynomial of the twist about a twist a:
 * {@code K(t) = value + (t - a) slope + (t - a)^2 bend}, Hermitian, 30 by 30, by columns; unknown i of node n is
 * {@code 3 n + i} with i = 0, 1, 2 for U, V, W. Imaginary parts are empty for harmonic 0.
 */
final class ElementPencil {
    static final int SIZE = 3 * ElementIntegrals.N;
    private static final int N = ElementIntegrals.N;

    final Field value;
    final Field slope;
    final Field bend;

    /**
     * Forms the matrices.
     *
     * @param lambda Lame's first constant
     * @param mu shear modulus
     * @param harmonic 0 or 1
     * @param twist the twist a
     */
    ElementPencil(ElementIntegrals s, double lambda, double mu, int harmonic, double twist) {
        value = Field.zero(SIZE * SIZE, harmonic > 0);
        slope = Field.zero(SIZE * SIZE, harmonic > 0);
        bend = Field.zero(SIZE * SIZE, harmonic > 0);
        double stiff = lambda + 2 * mu;
        for (int a = 0; a < N; a++) {
            for (int b = 0; b < N; b++) {
                int p = a * N + b;
                int q = b * N + a;
                put(value, a, 0, b, 0, stiff * s.xx[p] + mu * s.yy[p], 0);
                put(value, a, 0, b, 1, lambda * s.xy[p] + mu * s.xy[q], 0);
                put(value, a, 1, b, 0, lambda * s.xy[q] + mu * s.xy[p], 0);
                put(value, a, 1, b, 1, stiff * s.yy[p] + mu * s.xx[p], 0);
                put(value, a, 2, b, 2, mu * (s.xx[p] + s.yy[p]), 0);
                double uw = lambda * s.xr[p] + mu * (s.xr[q] + s.yn[q]);
                double vw = lambda * s.yr[p] + mu * (s.yr[q] - s.xn[q]);
                double uwIm = harmonic * (lambda * s.xn[p] - mu * s.xn[q]);
                double vwIm = harmonic * (lambda * s.yn[p] - mu * s.yn[q]);
                put(slope, a, 0, b, 2, uw, uwIm);
                put(slope, b, 2, a, 0, uw, -uwIm);
                put(slope, a, 1, b, 2, vw, vwIm);
                put(slope, b, 2, a, 1, vw, -vwIm);
                double turn = s.rn[p] - s.rn[q];
                double square = s.rr[p] + harmonic * s.nn[p];
                put(bend, a, 0, b, 0, mu * (square + s.nn[p]), harmonic * mu * turn);
                put(bend, a, 1, b, 1, mu * (square + s.nn[p]), harmonic * mu * turn);
                put(bend, a, 2, b, 2, stiff * square, harmonic * stiff * turn);
                put(bend, a, 0, b, 1, -mu * turn, 2 * harmonic * mu * s.nn[p]);
                put(bend, a, 1, b, 0, mu * turn, -2 * harmonic * mu * s.nn[p]);
            }
        }
        value.add(twist, 0, slope);
        value.add(twist * twist, 0, bend);
        slope.add(2 * twist, 0, bend);
    }

    private static void put(Field matrix, int a, int i, int b, int j, double re, double im) {
        int at = SIZE * (3 * b + j) + 3 * a + i;
        matrix.re()[at] = re;
        if (matrix.complex()) {
            matrix.im()[at] = im;
        }
    }

    /** Adds a matrix times a vector to a result. */
    static void multiply(Field matrix, Field x, Field y) {
        for (int j = 0; j < SIZE; j++) {
            if (matrix.complex()) {
                addColumn(matrix.re(), matrix.im(), j, x.re()[j], x.im(j), y.re(), y.im());
            } else {
                addColumn(matrix.re(), j, x.re()[j], y.re());
            }
        }
    }

    private static void addColumn(double[] m, int j, double x, double[] y) {
        int at = SIZE * j;
        for (int i = 0; i < SIZE; i++) {
            y[i] += m[at + i] * x;
        }
    }

    private static void addColumn(double[] re, double[] im, int j, double x, double z, double[] y, double[] w) {
        int at = SIZE * j;
        for (int i = 0; i < SIZE; i++) {
            y[i] += re[at + i] * x - im[at + i] * z;
        }
        for (int i = 0; i < SIZE; i++) {
            w[i] += re[at + i] * z + im[at + i] * x;
        }
    }
}
