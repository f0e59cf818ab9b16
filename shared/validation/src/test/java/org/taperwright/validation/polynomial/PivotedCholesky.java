package org.taperwright.validation.polynomial;

import org.jspecify.annotations.Nullable;

/**
 * Cholesky's factors of the leading part of a Hermitian matrix of unit diagonal, greatest pivot first. Directions with
 * nothing left but rounding are dropped, which leaves the Ritz method with fewer fields and no less sound.
 */
final class PivotedCholesky {
    private static final double ROUNDING = 1e-11;

    private final double[][] re;
    private final double[][] im;
    private final double[][] matrix;
    private final int leading;
    private final int rank;

    PivotedCholesky(double[][] matrixRe, double @Nullable [][] matrixIm, int leading) {
        int n = matrixRe.length;
        matrix = matrixRe;
        this.leading = leading;
        re = new double[n][leading];
        im = matrixIm == null ? new double[0][] : new double[n][leading];
        double[] left = new double[leading];
        boolean[] used = new boolean[n];
        for (int i = 0; i < leading; i++) {
            left[i] = matrixRe[i][i];
        }
        int k = 0;
        for (; k < leading; k++) {
            int pivot = -1;
            for (int i = 0; i < leading; i++) {
                pivot = !used[i] && (pivot < 0 || left[i] > left[pivot]) ? i : pivot;
            }
            if (!(left[pivot] > ROUNDING)) {
                break;
            }
            used[pivot] = true;
            double root = Math.sqrt(left[pivot]);
            for (int i = 0; i < n; i++) {
                if (!used[i]) {
                    column(i, pivot, k, root, matrixIm);
                    if (i < leading) {
                        left[i] -= re[i][k] * re[i][k] + (matrixIm == null ? 0 : im[i][k] * im[i][k]);
                    }
                }
            }
            re[pivot][k] = root;
        }
        rank = k;
    }

    private void column(int i, int pivot, int k, double root, double @Nullable [][] matrixIm) {
        double[] a = re[i];
        double[] b = re[pivot];
        if (matrixIm == null) {
            a[k] = (matrix[i][pivot] - dot(a, b, k)) / root;
            return;
        }
        double[] c = im[i];
        double[] d = im[pivot];
        a[k] = (matrix[i][pivot] - dot(a, b, k) - dot(c, d, k)) / root;
        c[k] = (matrixIm[i][pivot] - dot(c, b, k) + dot(a, d, k)) / root;
    }

    private static double dot(double[] a, double[] b, int count) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int i = 0;
        for (; i + 3 < count; i += 4) {
            s0 += a[i] * b[i];
            s1 += a[i + 1] * b[i + 1];
            s2 += a[i + 2] * b[i + 2];
            s3 += a[i + 3] * b[i + 3];
        }
        for (; i < count; i++) {
            s0 += a[i] * b[i];
        }
        return s0 + s1 + (s2 + s3);
    }

    /** What is left of the trailing part when the leading one is eliminated; its real part. */
    double[][] remainder() {
        int n = matrix.length - leading;
        double[][] rest = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                rest[i][j] = matrix[leading + i][leading + j] - dot(re[leading + i], re[leading + j], rank);
                if (im.length > 0) {
                    rest[i][j] -= dot(im[leading + i], im[leading + j], rank);
                }
            }
        }
        return rest;
    }
}
