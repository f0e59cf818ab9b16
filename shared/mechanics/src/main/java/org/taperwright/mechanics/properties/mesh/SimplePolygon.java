package org.taperwright.mechanics.properties.mesh;

/** Whether a polygon crosses or all but touches itself. */
final class SimplePolygon {
    /** Square of the distance, in diameters, at which corners fall together in a triangulation. */
    private static final double TOUCH = 1e-10;

    private SimplePolygon() {}

    /** Whether no two of its sides meet but at their shared corner. */
    static boolean simple(double[] x, double[] y) {
        int n = x.length;
        if (n < 3) {
            return false;
        }
        for (int i = 0; i < n; i++) {
            int i1 = i + 1 == n ? 0 : i + 1;
            for (int j = i + 2; j < n; j++) {
                int j1 = j + 1 == n ? 0 : j + 1;
                double dx = x[i] - x[j];
                double dy = y[i] - y[j];
                if (dx * dx + dy * dy < TOUCH) {
                    return false;
                }
                if (j1 != i && !apart(x, i, i1, j, j1) && !apart(y, i, i1, j, j1) && cross(x, y, i, i1, j, j1)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean apart(double[] v, int a, int b, int c, int d) {
        return Math.max(v[a], v[b]) < Math.min(v[c], v[d]) || Math.min(v[a], v[b]) > Math.max(v[c], v[d]);
    }

    private static boolean cross(double[] x, double[] y, int a, int b, int c, int d) {
        return side(x, y, a, b, c) * side(x, y, a, b, d) <= 0 && side(x, y, c, d, a) * side(x, y, c, d, b) <= 0;
    }

    private static double side(double[] x, double[] y, int a, int b, int p) {
        return Math.signum((x[b] - x[a]) * (y[p] - y[a]) - (y[b] - y[a]) * (x[p] - x[a]));
    }
}
