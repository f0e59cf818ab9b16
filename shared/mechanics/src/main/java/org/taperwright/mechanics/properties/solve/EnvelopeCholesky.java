package org.taperwright.mechanics.properties.solve;

/**
 * A Hermitian positive definite matrix stored by columns down to the last row that can fill in, and its Cholesky factor
 * {@code L L^H} in the same place. A real symmetric matrix carries no imaginary part. The columns of a block all begin at
 * the block's first row, so that sums over two of them run over the same places.
 */
public final class EnvelopeCholesky {
    private static final int BLOCK = 16;

    private final int size;
    private final boolean complex;
    private final double[][] re;
    private final double[][] im;
    private final Pair tail;
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
            if (k % 2 == 0 && k + 1 < size) {
                reach = Math.max(reach, Math.max(k + 1, last[k + 1]));
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
        tail = new Pair(new double[longest], new double[longest], new double[imaginary], new double[imaginary]);
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
     * Factorises in place, two columns at a time.
     *
     * @return whether the matrix was positive definite
     */
    public boolean factorise() {
        for (int k = 0; k < size; k += 2) {
            if (!finish(k)) {
                return false;
            }
            if (k + 1 < size) {
                takeOut(k, k + 1);
                if (!finish(k + 1)) {
                    return false;
                }
                eliminatePair(k);
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

    /** Takes a finished column and the next out of all that come after, block by block. */
    private void eliminatePair(int k) {
        int base = base(k);
        int end = base + re[k].length;
        Pair pair = new Pair(re[k], re[k + 1], complex ? im[k] : re[k], complex ? im[k + 1] : re[k]);
        for (int first = base; first < end; first += BLOCK) {
            int length = end - first;
            if (first > base) {
                pair = tail(k, first - base, length);
            }
            for (int j = Math.max(first, k + 2); j < Math.min(first + BLOCK, end); j++) {
                int at = j - first;
                if (complex) {
                    pair.takeOut(re[j], im[j], at, length);
                } else {
                    Rows.add(-pair.re0[at], pair.re0, -pair.re1[at], pair.re1, re[j], at, length);
                }
            }
        }
    }

    /** The part of two columns below a later block's first row, from place 0. */
    private Pair tail(int k, int from, int length) {
        System.arraycopy(re[k], from, tail.re0, 0, length);
        System.arraycopy(re[k + 1], from, tail.re1, 0, length);
        if (complex) {
            System.arraycopy(im[k], from, tail.im0, 0, length);
            System.arraycopy(im[k + 1], from, tail.im1, 0, length);
        }
        return tail;
    }

    private record Pair(double[] re0, double[] re1, double[] im0, double[] im1) {
        void takeOut(double[] re, double[] im, int at, int length) {
            double f0 = re0[at];
            double f1 = re1[at];
            double g0 = im0[at];
            double g1 = im1[at];
            for (int i = at; i < length; i++) {
                re[i] -= f0 * re0[i] + g0 * im0[i] + (f1 * re1[i] + g1 * im1[i]);
            }
            for (int i = at; i < length; i++) {
                im[i] -= f0 * im0[i] - g0 * re0[i] + (f1 * im1[i] - g1 * re1[i]);
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
