package org.taperwright.mechanics.properties.mesh;

/**
 * The ten-node cubic triangle: Lagrange shape functions on the reference triangle (0,0), (1,0), (0,1), with the 12-point
 * quadrature exact to degree 6 (D. A. Dunavant, Int. J. Numer. Meth. Eng. 21, 1985). Node order: three corners, two
 * nodes a side in the sense of travel from corner 0, the node inside.
 */
public final class CubicTriangle {
    /** Nodes of an element. */
    public static final int NODES = 10;
    /** Quadrature points. */
    public static final int POINTS = 12;

    /** Node indices along each side, corner to corner. */
    private static final int[][] SIDES = {{0, 3, 4, 1}, {1, 5, 6, 2}, {2, 7, 8, 0}};

    private static final double[] XI = new double[POINTS];
    private static final double[] ETA = new double[POINTS];
    private static final double[] WEIGHT = new double[POINTS];
    private static final double[][] VALUE = new double[POINTS][NODES];
    private static final double[][] BY_XI = new double[POINTS][NODES];
    private static final double[][] BY_ETA = new double[POINTS][NODES];

    static {
        int at = orbit(0, 0.116786275726379, 0.249286745170910, 0.249286745170910);
        at = orbit(at, 0.050844906370207, 0.063089014491502, 0.063089014491502);
        at = orbit(at, 0.082851075618374, 0.053145049844817, 0.310352451033784);
        orbit(at, 0.082851075618374, 0.310352451033784, 0.053145049844817);
        for (int q = 0; q < POINTS; q++) {
            shape(XI[q], ETA[q], VALUE[q], BY_XI[q], BY_ETA[q]);
        }
    }

    private CubicTriangle() {}

    private static int orbit(int at, double weight, double a, double b) {
        double c = 1 - a - b;
        double[][] points = {{a, b}, {b, c}, {c, a}};
        for (int k = 0; k < 3; k++) {
            XI[at + k] = points[k][0];
            ETA[at + k] = points[k][1];
            WEIGHT[at + k] = weight / 2;
        }
        return at + 3;
    }

    /** Weight of a quadrature point; they sum to one half. */
    public static double weight(int q) {
        return WEIGHT[q];
    }

    /** Shape functions at a quadrature point; read only. */
    public static double[] value(int q) {
        return VALUE[q];
    }

    /** Their derivatives by the first coordinate; read only. */
    public static double[] byXi(int q) {
        return BY_XI[q];
    }

    /** Their derivatives by the second coordinate; read only. */
    public static double[] byEta(int q) {
        return BY_ETA[q];
    }

    /** The four nodes of a side, corner to corner; read only. */
    public static int[] side(int side) {
        return SIDES[side];
    }

    /** Reference coordinates of the point at share t along a side: {xi, eta}. */
    public static double[] onSide(int side, double t) {
        return switch (side) {
            case 0 -> new double[] {t, 0};
            case 1 -> new double[] {1 - t, t};
            default -> new double[] {0, 1 - t};
        };
    }

    /** Shape functions and their derivatives at a place of the reference triangle. */
    public static void shape(double xi, double eta, double[] value, double[] byXi, double[] byEta) {
        double[] l = {1 - xi - eta, xi, eta};
        double[][] by = new double[NODES][3];
        for (int i = 0; i < 3; i++) {
            double a = l[i];
            value[i] = a * (3 * a - 1) * (3 * a - 2) / 2;
            by[i][i] = (27 * a * a - 18 * a + 2) / 2;
        }
        for (int side = 0; side < 3; side++) {
            int i = side;
            int j = (side + 1) % 3;
            cubicSide(l, by, value, 3 + 2 * side, i, j);
            cubicSide(l, by, value, 4 + 2 * side, j, i);
        }
        value[9] = 27 * l[0] * l[1] * l[2];
        by[9][0] = 27 * l[1] * l[2];
        by[9][1] = 27 * l[0] * l[2];
        by[9][2] = 27 * l[0] * l[1];
        for (int n = 0; n < NODES; n++) {
            byXi[n] = by[n][1] - by[n][0];
            byEta[n] = by[n][2] - by[n][0];
        }
    }

    private static void cubicSide(double[] l, double[][] by, double[] value, int node, int near, int far) {
        value[node] = 4.5 * l[near] * l[far] * (3 * l[near] - 1);
        by[node][near] = 4.5 * l[far] * (6 * l[near] - 1);
        by[node][far] = 4.5 * l[near] * (3 * l[near] - 1);
    }
}
