package org.taperwright.mechanics.properties.solve;

/**
 * A Hermitian positive definite matrix stored by columns down to the last row that can fill in, and its Cholesky factor
 * {@code L L^H} in the same place. A real symmetric matrix carries no imaginary part. The columns of a block all begin at
 * the block's first row, so that sums over two of them run over the same places.
 */
public final class EnvelopeCholesky {
    private static final int BLOCK = 16;
    /** Columns taken out of the others together, so that each entry is fetched once for all of them. */
    private static final int GROUP = 4;

    private final int size;
    private final boolean complex;
    private final double[][] re;
    private final double[][] im;
    private final Group tail;
    private final int longest;

    /**
     * An empty matrix.
     *
     * @param last for each column the last row with an entry; made non-falling here, which holds
     *     all fill, and even for columns that are taken together
     * @param complex whether entries have imaginary parts
     */
    public EnvelopeCholesky(int[] last, boolean complex) {
        size = last.length;
        this.complex = complex;
        re = new double[size][];
        im = new double[complex ? size : 0][];
        int reach = 0;
        int greatest = 0;
        for (int k = 0; k < size; k++) {
            reach = Math.max(reach, Math.max(k, last[k]));
            for (int next = k + 1; k % GROUP == 0 && next < Math.min(k + GROUP, size); next++) {
                reach = Math.max(reach, Math.max(next, last[next]));
            }
            int length = reach - base(k) + 1;
            greatest = Math.max(greatest, length);
            re[k] = new double[length];
            if (complex) {
                im[k] = new double[length];
            }
        }
        longest = greatest;
        int imaginary = complex ? longest : 0;
        tail = new Group(new double[GROUP][longest], new double[GROUP][imaginary]);
    }

    /** A full matrix. */
    public static EnvelopeCholesky full(int size, boolean complex) {
        int[] last = new int[size];
        java.util.Arrays.fill(last, size - 1);
        return new EnvelopeCholesky(last, complex);
    }

    private static int base(int k) {
        return k - k % BLOCK;
    }

    /** Adds a number to the entry at a row and column, and its conjugate to the mirror. */
    public void add(int row, int col, double real, double imaginary) {
        int low = Math.min(row, col);
        int at = Math.max(row, col) - base(low);
        re[low][at] += real;
        if (complex) {
            im[low][at] += row >= col ? imaginary : -imaginary;
        }
    }

    /**
     * Factorises in place, a few columns at a time.
     *
     * @return whether the matrix was positive definite
     */
    public boolean factorise() {
        for (int k = 0; k < size; k += GROUP) {
            int end = Math.min(k + GROUP, size);
            for (int column = k; column < end; column++) {
                for (int before = k; before < column; before++) {
                    takeOut(before, column);
                }
                if (!finish(column)) {
                    return false;
                }
            }
            if (end - k == GROUP) {
                eliminate(k);
            }
        }
        return true;
    }

    private boolean finish(int k) {
        int own = k % BLOCK;
        double pivot = re[k][own];
        if (!(pivot > 0)) {
            return false;
        }
        double scale = 1 / Math.sqrt(pivot);
        scale(re[k], own, scale);
        if (complex) {
            im[k][own] = 0;
            scale(im[k], own, scale);
        }
        return true;
    }

    private static void scale(double[] column, int from, double factor) {
        for (int i = from; i < column.length; i++) {
            column[i] *= factor;
        }
    }

    /** Takes one finished column out of the next, which is in the same block. */
    private void takeOut(int k, int next) {
        int at = next % BLOCK;
        double f = re[k][at];
        int length = re[k].length;
        if (complex) {
            double g = im[k][at];
            Rows.add(-f, re[k], -g, im[k], re[next], at, length);
            Rows.add(-f, im[k], g, re[k], im[next], at, length);
        } else {
            Rows.add(-f, re[k], re[next], at, length);
        }
    }

    /** Takes a group of finished columns out of all that come after, block by block. */
    private void eliminate(int k) {
        int base = base(k);
        int end = base + re[k].length;
        for (int first = base; first < end; first += BLOCK) {
            int length = end - first;
            Group group =
                    first == base ? new Group(own(re, k), own(complex ? im : re, k)) : tail(k, first - base, length);
            for (int j = Math.max(first, k + GROUP); j < Math.min(first + BLOCK, end); j++) {
                if (complex) {
                    group.takeOut(re[j], im[j], j - first, length);
                } else {
                    group.takeOut(re[j], j - first, length);
                }
            }
        }
    }

    private static double[][] own(double[][] columns, int k) {
        return new double[][] {columns[k], columns[k + 1], columns[k + 2], columns[k + 3]};
    }

    /** The part of a group below a later block's first row, from place 0. */
    private Group tail(int k, int from, int length) {
        for (int c = 0; c < GROUP; c++) {
            System.arraycopy(re[k + c], from, tail.re[c], 0, length);
            if (complex) {
                System.arraycopy(im[k + c], from, tail.im[c], 0, length);
            }
        }
        return tail;
    }

    private record Group(double[][] re, double[][] im) {
        void takeOut(double[] to, int at, int length) {
            double[] a = re[0];
            double[] b = re[1];
            double[] c = re[2];
            double[] d = re[3];
            double fa = a[at];
            double fb = b[at];
            double fc = c[at];
            double fd = d[at];
            for (int i = at; i < length; i++) {
                to[i] -= fa * a[i] + fb * b[i] + (fc * c[i] + fd * d[i]);
            }
        }

        void takeOut(double[] toRe, double[] toIm, int at, int length) {
            takeOutPair(0, toRe, toIm, at, length);
            takeOutPair(2, toRe, toIm, at, length);
        }

        private void takeOutPair(int first, double[] toRe, double[] toIm, int at, int length) {
            double[] re0 = re[first];
            double[] re1 = re[first + 1];
            double[] im0 = im[first];
            double[] im1 = im[first + 1];
            double f0 = re0[at];
            double f1 = re1[at];
            double g0 = im0[at];
            double g1 = im1[at];
            for (int i = at; i < length; i++) {
                toRe[i] -= f0 * re0[i] + g0 * im0[i] + (f1 * re1[i] + g1 * im1[i]);
            }
            for (int i = at; i < length; i++) {
                toIm[i] -= f0 * im0[i] - g0 * re0[i] + (f1 * im1[i] - g1 * re1[i]);
            }
        }
    }

    /**
     * Overwrites a right-hand side with the solution; after {@link #factorise}.
     *
     * @param b real parts
     * @param c imaginary parts; not looked at for a real matrix
     */
    public void solve(double[] b, double[] c) {
        double[] x = new double[longest];
        double[] y = new double[complex ? longest : 0];
        for (int first = 0; first < size; first += BLOCK) {
            int end = Math.min(first + BLOCK, size);
            int reach = re[end - 1].length;
            move(b, c, first, x, y, reach, true);
            for (int k = first; k < end; k++) {
                forward(k, k - first, x, y);
            }
            move(b, c, first, x, y, reach, false);
        }
        for (int first = base(size - 1); first >= 0; first -= BLOCK) {
            int end = Math.min(first + BLOCK, size);
            int reach = re[end - 1].length;
            move(b, c, first, x, y, reach, true);
            for (int k = end - 1; k >= first; k--) {
                backward(k, k - first, x, y);
            }
            move(b, c, first, x, y, end - first, false);
        }
    }

    private void move(double[] b, double[] c, int first, double[] x, double[] y, int length, boolean in) {
        System.arraycopy(in ? b : x, in ? first : 0, in ? x : b, in ? 0 : first, length);
        if (complex) {
            System.arraycopy(in ? c : y, in ? first : 0, in ? y : c, in ? 0 : first, length);
        }
    }

    private void forward(int k, int at, double[] x, double[] y) {
        double[] p = re[k];
        x[at] /= p[at];
        if (complex) {
            y[at] /= p[at];
            Rows.add(-x[at], p, y[at], im[k], x, at + 1, p.length);
            Rows.add(-x[at], im[k], -y[at], p, y, at + 1, p.length);
        } else {
            Rows.add(-x[at], p, x, at + 1, p.length);
        }
    }

    private void backward(int k, int at, double[] x, double[] y) {
        double[] p = re[k];
        int n = p.length;
        if (complex) {
            double[] q = im[k];
            double u = Rows.dot(p, x, at + 1, n) + Rows.dot(q, y, at + 1, n);
            double v = Rows.dot(p, y, at + 1, n) - Rows.dot(q, x, at + 1, n);
            x[at] = (x[at] - u) / p[at];
            y[at] = (y[at] - v) / p[at];
        } else {
            x[at] = (x[at] - Rows.dot(p, x, at + 1, n)) / p[at];
        }
    }
}
