package org.taperwright.shaping.placement;

/**
 * Solves symmetric positive definite equations whose entries lie within five places of the diagonal, in place. Rows are
 * preceded by five rows of the identity so that no row is special; entry {@code (i, i - d)} stands at {@code 6 (i + 5) + d}.
 */
final class BandedCholesky {
    static final int WIDTH = 6;
    static final int PAD = WIDTH - 1;

    private BandedCholesky() {}

    static double[] band(int rows) {
        double[] band = new double[WIDTH * (rows + PAD)];
        for (int i = 0; i < PAD; i++) {
            band[WIDTH * i] = 1;
        }
        return band;
    }

    /**
     * Factors; the diagonal then holds the inverse of the factor's.
     *
     * @return whether the matrix was positive definite
     */
    static boolean factor(double[] m, int rows) {
        for (int i = PAD; i < rows + PAD; i++) {
            int at = WIDTH * i;
            int r1 = at - WIDTH;
            int r2 = r1 - WIDTH;
            int r3 = r2 - WIDTH;
            int r4 = r3 - WIDTH;
            int r5 = r4 - WIDTH;
            double l5 = m[at + 5] * m[r5];
            double l4 = (m[at + 4] - l5 * m[r4 + 1]) * m[r4];
            double l3 = (m[at + 3] - l5 * m[r3 + 2] - l4 * m[r3 + 1]) * m[r3];
            double l2 = (m[at + 2] - l5 * m[r2 + 3] - l4 * m[r2 + 2] - l3 * m[r2 + 1]) * m[r2];
            double l1 = (m[at + 1] - l5 * m[r1 + 4] - l4 * m[r1 + 3] - l3 * m[r1 + 2] - l2 * m[r1 + 1]) * m[r1];
            double square = m[at] - l5 * l5 - l4 * l4 - l3 * l3 - l2 * l2 - l1 * l1;
            if (!(square > 0)) {
                return false;
            }
            m[at + 5] = l5;
            m[at + 4] = l4;
            m[at + 3] = l3;
            m[at + 2] = l2;
            m[at + 1] = l1;
            m[at] = 1 / Math.sqrt(square);
        }
        return true;
    }

    /** Solves by a factored matrix; the right side, preceded by five zeros, becomes the answer. */
    static void solve(double[] m, double[] b, int rows) {
        int end = rows + PAD;
        for (int i = PAD; i < end; i++) {
            int at = WIDTH * i;
            b[i] = (b[i]
                            - m[at + 1] * b[i - 1]
                            - m[at + 2] * b[i - 2]
                            - m[at + 3] * b[i - 3]
                            - m[at + 4] * b[i - 4]
                            - m[at + 5] * b[i - 5])
                    * m[at];
        }
        for (int i = end - 1; i >= PAD; i--) {
            int at = WIDTH * i;
            double value = b[i] * m[at];
            b[i] = value;
            b[i - 1] -= m[at + 1] * value;
            b[i - 2] -= m[at + 2] * value;
            b[i - 3] -= m[at + 3] * value;
            b[i - 4] -= m[at + 4] * value;
            b[i - 5] -= m[at + 5] * value;
        }
    }
}
