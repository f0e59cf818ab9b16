package org.taperwright.mechanics.properties.solve;

/**
 * A symmetric positive definite matrix stored by columns from the diagonal down to the last row that can fill in, and
 * its Cholesky factor {@code L L^T} in the same place.
 */
public final class EnvelopeCholesky {
    private final int size;
    private final double[][] column;

    /**
     * An empty matrix.
     *
     * @param last for each column the last row with an entry; made non-falling here, which holds all fill
     */
    public EnvelopeCholesky(int[] last) {
        size = last.length;
        column = new double[size][];
        int reach = 0;
        for (int k = 0; k < size; k++) {
            reach = Math.max(reach, Math.max(k, last[k]));
            column[k] = new double[reach - k + 1];
        }
    }

    /** Adds to the entry at a row and column, and to its mirror. */
    public void add(int row, int col, double value) {
        if (row >= col) {
            column[col][row - col] += value;
        } else {
            column[row][col - row] += value;
        }
    }

    /**
     * Factorises in place.
     *
     * @return whether the matrix was positive definite
     */
    public boolean factorise() {
        for (int k = 0; k < size; k++) {
            double[] pivot = column[k];
            if (!(pivot[0] > 0)) {
                return false;
            }
            double scale = 1 / Math.sqrt(pivot[0]);
            for (int i = 0; i < pivot.length; i++) {
                pivot[i] *= scale;
            }
            for (int j = 1; j < pivot.length; j++) {
                if (pivot[j] != 0) {
                    subtract(pivot[j], pivot, j, column[k + j]);
                }
            }
        }
        return true;
    }

    private static void subtract(double factor, double[] source, int from, double[] target) {
        int n = source.length - from;
        for (int i = 0; i < n; i++) {
            target[i] -= factor * source[from + i];
        }
    }

    /** Overwrites a right-hand side with the solution; after {@link #factorise}. */
    public void solve(double[] b) {
        for (int k = 0; k < size; k++) {
            double[] pivot = column[k];
            double value = b[k] / pivot[0];
            b[k] = value;
            for (int i = 1; i < pivot.length; i++) {
                b[k + i] -= value * pivot[i];
            }
        }
        for (int k = size - 1; k >= 0; k--) {
            double[] pivot = column[k];
            double sum = b[k];
            for (int i = 1; i < pivot.length; i++) {
                sum -= pivot[i] * b[k + i];
            }
            b[k] = sum / pivot[0];
        }
    }
}
