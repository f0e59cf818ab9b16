package org.taperwright.mechanics.properties.mesh;

/** Lagrange's cubic functions on a side with nodes at 0, 1/3, 2/3 and 1. */
public final class CubicSide {
    private CubicSide() {}

    /** Their values at a share t of the side. */
    public static double[] value(double t) {
        double a = 1 - t;
        return new double[] {
            a * (3 * a - 1) * (3 * a - 2) / 2,
            4.5 * a * t * (3 * a - 1),
            4.5 * a * t * (3 * t - 1),
            t * (3 * t - 1) * (3 * t - 2) / 2
        };
    }

    /** Their derivatives by t. */
    public static double[] slope(double t) {
        double a = 1 - t;
        return new double[] {
            -(27 * a * a - 18 * a + 2) / 2,
            4.5 * (a * (3 * a - 1) - t * (6 * a - 1)),
            4.5 * (a * (6 * t - 1) - t * (3 * t - 1)),
            (27 * t * t - 18 * t + 2) / 2
        };
    }
}
