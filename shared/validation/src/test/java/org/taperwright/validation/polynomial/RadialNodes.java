package org.taperwright.validation.polynomial;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Gauss points in {@code rho = r^2} over 0 to 1 with their Lagrange polynomials. A product of two fields is an angular
 * harmonic times a polynomial in rho, which these points hold exactly.
 */
final class RadialNodes {
    /** Greatest degree of a displacement, a polynomial in the section's plane. */
    static final int DEGREE = 12;

    /** Points: one more than the degree in rho of a product of two fields. */
    static final int COUNT = DEGREE + 1;

    private static final double[] RHO = new double[COUNT];
    private static final double[] BARYCENTRIC = new double[COUNT];
    /** {@code int_0^1 s^(l+1) L_g(s^2 rho_k) ds}, by l, then g, then k. */
    private static final double[][][] RAYS = new double[2 * DEGREE + 1][COUNT][COUNT];

    static {
        GaussIntegratorFactory factory = new GaussIntegratorFactory();
        GaussIntegrator points = factory.legendre(COUNT, 0, 1);
        for (int g = 0; g < COUNT; g++) {
            RHO[g] = points.getPoint(g);
        }
        for (int g = 0; g < COUNT; g++) {
            double product = 1;
            for (int k = 0; k < COUNT; k++) {
                product *= k == g ? 1 : RHO[g] - RHO[k];
            }
            BARYCENTRIC[g] = 1 / product;
        }
        GaussIntegrator along = factory.legendre(2 * COUNT, 0, 1);
        double[] lagrange = new double[COUNT];
        for (int k = 0; k < COUNT; k++) {
            for (int q = 0; q < along.getNumberOfPoints(); q++) {
                double s = along.getPoint(q);
                lagrange(s * s * RHO[k], lagrange);
                double weight = along.getWeight(q) * s;
                for (int l = 0; l < RAYS.length; l++) {
                    for (int g = 0; g < COUNT; g++) {
                        RAYS[l][g][k] += weight * lagrange[g];
                    }
                    weight *= s;
                }
            }
        }
    }

    private RadialNodes() {}

    /** Radius of a point, over that of the circumscribed circle. */
    static double radius(int g) {
        return Math.sqrt(RHO[g]);
    }

    /** Share of point g in the area integral of harmonic l along the ray to a place of the outline at point k. */
    static double ray(int l, int g, int k) {
        return RAYS[l][g][k];
    }

    /** All Lagrange polynomials at rho. */
    static void lagrange(double rho, double[] values) {
        double product = 1;
        for (int g = 0; g < COUNT; g++) {
            double apart = rho - RHO[g];
            if (apart == 0) {
                java.util.Arrays.fill(values, 0);
                values[g] = 1;
                return;
            }
            product *= apart;
        }
        for (int g = 0; g < COUNT; g++) {
            values[g] = product * BARYCENTRIC[g] / (rho - RHO[g]);
        }
    }
}
