package org.taperwright.mechanics.properties.solve;

/** Sums over stretches of arrays at the same places in both, which is how they run at the processor's width. */
public final class Rows {
    private Rows() {}

    /** {@code sum a[i] b[i]} for i from {@code from} to before {@code to}. */
    public static double dot(double[] a, double[] b, int from, int to) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        double s4 = 0;
        double s5 = 0;
        int i = from;
        // several sums, so that no addition waits for the one before
        for (; i + 5 < to; i += 6) {
            s0 += a[i] * b[i];
            s1 += a[i + 1] * b[i + 1];
            s2 += a[i + 2] * b[i + 2];
            s3 += a[i + 3] * b[i + 3];
            s4 += a[i + 4] * b[i + 4];
            s5 += a[i + 5] * b[i + 5];
        }
        for (; i < to; i++) {
            s0 += a[i] * b[i];
        }
        return s0 + s1 + (s2 + s3) + (s4 + s5);
    }

    /** Adds {@code factor a[i]} to {@code b[i]} for i from {@code from} to before {@code to}. */
    public static void add(double factor, double[] a, double[] b, int from, int to) {
        for (int i = from; i < to; i++) {
            b[i] += factor * a[i];
        }
    }

    /** Adds {@code f a[i] + g b[i]} to {@code c[i]} for i from {@code from} to before {@code to}. */
    public static void add(double f, double[] a, double g, double[] b, double[] c, int from, int to) {
        for (int i = from; i < to; i++) {
            c[i] += f * a[i] + g * b[i];
        }
    }
}
