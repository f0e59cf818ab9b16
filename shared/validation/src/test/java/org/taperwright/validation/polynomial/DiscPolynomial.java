package org.taperwright.validation.polynomial;

/**
 * A polynomial {@code exp(i l theta) r^|l| P_j^(0,|l|)(2 r^2 - 1)}, orthogonal on the disc (F. Zernike, Physica 1,
 * 1934), at the radial points, with {@code 2 d/dZ* = exp(i theta)(d/dr - l/r)} and {@code 2 d/dZ = exp(-i theta)(d/dr + l/r)}.
 */
final class DiscPolynomial {
    private final int angular;
    private final int degree;
    private final double[] value = new double[RadialNodes.COUNT];
    private final double[] slope = new double[RadialNodes.COUNT];

    DiscPolynomial(int angular, int j) {
        this.angular = angular;
        int m = Math.abs(angular);
        degree = m + 2 * j;
        for (int g = 0; g < value.length; g++) {
            double r = RadialNodes.radius(g);
            double[] jacobi = jacobi(j, m, 2 * r * r - 1);
            double power = Math.pow(r, m);
            value[g] = power * jacobi[0];
            slope[g] = power * (m / r * jacobi[0] + 4 * r * jacobi[1]);
        }
    }

    /** {@code P_j^(0,b)(x)} and its derivative, by the three-term recurrence. */
    private static double[] jacobi(int j, int b, double x) {
        double p0 = 1;
        double d0 = 0;
        double p1 = ((b + 2) * x - b) / 2;
        double d1 = (b + 2) / 2.0;
        if (j == 0) {
            return new double[] {p0, d0};
        }
        for (int n = 2; n <= j; n++) {
            double c = 2.0 * n + b;
            double a = 2.0 * n * (n + b) * (c - 2);
            double f = (c - 1) * c * (c - 2) / a;
            double e = -(c - 1) * b * b / a;
            double h = 2.0 * (n - 1) * (n + b - 1) * c / a;
            double p = (f * x + e) * p1 - h * p0;
            double d = f * p1 + (f * x + e) * d1 - h * d0;
            p0 = p1;
            d0 = d1;
            p1 = p;
            d1 = d;
        }
        return new double[] {p1, d1};
    }

    int degree() {
        return degree;
    }

    double[] times(double factor) {
        double[] result = new double[value.length];
        for (int g = 0; g < result.length; g++) {
            result[g] = factor * value[g];
        }
        return result;
    }

    /** {@code 2 d/dZ*}, times a factor. */
    double[] byConjugate(double factor) {
        return derivative(factor, -angular);
    }

    /** {@code 2 d/dZ}, times a factor. */
    double[] byZ(double factor) {
        return derivative(factor, angular);
    }

    private double[] derivative(double factor, int sign) {
        double[] result = new double[value.length];
        for (int g = 0; g < result.length; g++) {
            result[g] = factor * (slope[g] + sign / RadialNodes.radius(g) * value[g]);
        }
        return result;
    }
}
