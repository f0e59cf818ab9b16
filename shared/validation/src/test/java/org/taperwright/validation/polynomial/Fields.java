package org.taperwright.validation.polynomial;

import java.util.ArrayList;
import java.util.List;

/**
 * The displacements {@code exp(i h s)} along a helix, s its turning, in the turning frame. With {@code U = ux + i uy},
 * {@code V = ux - i uy}, {@code uz = i w} and the twist tau they give
 * {@code S = dU/dZ + dV/dZ*, P+ = 2 dU/dZ*, P- = 2 dV/dZ, E = -tau (h - J) w, G+ = 2 dw/dZ* + tau (h - J) U,
 * G- = 2 dw/dZ + tau (h - J) V}. Each is a polynomial orthogonal on the disc (Zernike's), so that thin sections lose no
 * digits sooner than they must.
 */
final class Fields {
    private final int harmonic;
    private final List<Field> fields = new ArrayList<>();

    private Fields(int harmonic) {
        this.harmonic = harmonic;
    }

    /** All displacements of the orders {@code J = h mod fold} but the rigid ones; fold 0 leaves J = h alone. */
    static List<Field> displacements(int harmonic, int fold) {
        Fields all = new Fields(harmonic);
        int p = RadialNodes.DEGREE;
        for (int order = -p - 1; order <= p + 1; order++) {
            if (fold == 0 ? order == harmonic : Math.floorMod(order - harmonic, fold) == 0) {
                for (int j = 0; 2 * j <= p; j++) {
                    all.add(order, j);
                }
            }
        }
        return all.fields;
    }

    /** Elongation by one. */
    static Field extension() {
        return imposed(0, Field.E, 1, 0);
    }

    /** Twist by one radian per length. */
    static Field torsion() {
        double[][] strains = new double[Field.KINDS][];
        strains[Field.G_PLUS] = radius(1);
        strains[Field.G_MINUS] = radius(-1);
        return new Field(0, strains, new int[Field.KINDS]);
    }

    /** Curvature by one, in a plane that stays fixed in space. */
    static Field bending() {
        return imposed(1, Field.E, 0, -1);
    }

    private static Field imposed(int order, int kind, double constant, double slope) {
        double[][] strains = new double[Field.KINDS][];
        double[] r = radius(slope);
        for (int g = 0; g < r.length; g++) {
            r[g] += constant;
        }
        strains[kind] = r;
        return new Field(order, strains, new int[Field.KINDS]);
    }

    private static double[] radius(double factor) {
        double[] r = new double[RadialNodes.COUNT];
        for (int g = 0; g < r.length; g++) {
            r[g] = factor * RadialNodes.radius(g);
        }
        return r;
    }

    private void add(int order, int j) {
        boolean shift = order == harmonic && j == 0;
        boolean spin = harmonic == 0 && order == 0 && j == 0;
        int twist = harmonic - order;
        int[] powers = {0, 1, 0, 0, 1, 1};
        DiscPolynomial u = new DiscPolynomial(order + 1, j);
        if (u.degree() <= RadialNodes.DEGREE && !spin) {
            double[][] strains = new double[Field.KINDS][];
            strains[Field.S] = u.byZ(0.5);
            strains[Field.P_PLUS] = u.byConjugate(1);
            strains[Field.G_PLUS] = u.times(twist);
            fields.add(new Field(order, strains, powers));
        }
        DiscPolynomial v = new DiscPolynomial(order - 1, j);
        if (v.degree() <= RadialNodes.DEGREE && !(shift && harmonic == 1)) {
            double[][] strains = new double[Field.KINDS][];
            strains[Field.S] = v.byConjugate(0.5);
            strains[Field.P_MINUS] = v.byZ(1);
            strains[Field.G_MINUS] = v.times(twist);
            fields.add(new Field(order, strains, powers));
        }
        DiscPolynomial w = new DiscPolynomial(order, j);
        if (w.degree() <= RadialNodes.DEGREE && !(shift && harmonic == 0)) {
            double[][] strains = new double[Field.KINDS][];
            strains[Field.E] = w.times(-twist);
            strains[Field.G_PLUS] = w.byConjugate(1);
            strains[Field.G_MINUS] = w.byZ(1);
            fields.add(new Field(order, strains, new int[] {0, 1, 0, 0, 0, 0}));
        }
    }
}
