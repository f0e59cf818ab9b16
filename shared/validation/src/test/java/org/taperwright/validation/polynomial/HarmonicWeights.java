package org.taperwright.validation.polynomial;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.taperwright.mechanics.properties.contour.BoundaryPoint;
import org.taperwright.mechanics.properties.contour.Contour;

/**
 * Weights that integrate {@code exp(i l theta) F(r)} over a section exactly where the integrand is a polynomial in the
 * plane: {@code sum_g F(r_g) (re + i im)[l][g]}, lengths over the circumscribed radius. They come from the outline alone,
 * by integrals along rays. The harmonics that vanish tell the section's rotational symmetry, their phases its mirrors.
 */
final class HarmonicWeights {
    private static final int HARMONICS = 2 * RadialNodes.DEGREE + 1;
    private static final double NOTHING = 1e-9;
    private static final GaussIntegrator[] RULES = new GaussIntegrator[RadialNodes.COUNT + 4];

    static {
        GaussIntegratorFactory factory = new GaussIntegratorFactory();
        for (int n = 1; n < RULES.length; n++) {
            RULES[n] = factory.legendre(n, 0, 1);
        }
    }

    private final double[][] re = new double[HARMONICS][RadialNodes.COUNT];
    private final double[][] im = new double[HARMONICS][RadialNodes.COUNT];
    private final int fold;
    private final boolean mirrored;

    HarmonicWeights(Contour contour) {
        double[][] edgeRe = new double[HARMONICS][RadialNodes.COUNT];
        double[][] edgeIm = new double[HARMONICS][RadialNodes.COUNT];
        double[] lagrange = new double[RadialNodes.COUNT];
        for (int piece = 0; piece < contour.size(); piece++) {
            int parts = contour.circular(piece) ? 1 + (int) (Math.abs(contour.sweep(piece)) / 0.7) : 1;
            double length = 2 * contour.length(piece) / parts;
            int extra = contour.circular(piece) ? 3 : 0;
            GaussIntegrator rule = RULES[Math.min(RadialNodes.COUNT, 3 + (int) (14 * length)) + extra];
            for (int q = 0; q < parts * rule.getNumberOfPoints(); q++) {
                int point = q % rule.getNumberOfPoints();
                int part = q / rule.getNumberOfPoints();
                BoundaryPoint at = contour.at(piece, (part + rule.getPoint(point)) / parts);
                double x = 2 * at.x();
                double y = 2 * at.y();
                double zRe = -(x * at.normalX() + y * at.normalY()) * length * rule.getWeight(point);
                double zIm = 0;
                RadialNodes.lagrange(x * x + y * y, lagrange);
                for (int l = 0; l < HARMONICS; l++) {
                    for (int k = 0; k < RadialNodes.COUNT; k++) {
                        edgeRe[l][k] += zRe * lagrange[k];
                        edgeIm[l][k] += zIm * lagrange[k];
                    }
                    double next = zRe * x - zIm * y;
                    zIm = zRe * y + zIm * x;
                    zRe = next;
                }
            }
        }
        for (int l = 0; l < HARMONICS; l++) {
            for (int g = 0; g < RadialNodes.COUNT; g++) {
                for (int k = 0; k < RadialNodes.COUNT; k++) {
                    re[l][g] += RadialNodes.ray(l, g, k) * edgeRe[l][k];
                    im[l][g] += RadialNodes.ray(l, g, k) * edgeIm[l][k];
                }
            }
        }
        fold = symmetry();
        mirrored = fold > 0 && turnToMirror();
        for (int l = 1; l < HARMONICS; l++) {
            for (int g = 0; g < RadialNodes.COUNT; g++) {
                double power = Math.pow(RadialNodes.radius(g), l);
                re[l][g] /= power;
                im[l][g] /= power;
            }
        }
    }

    private double size(int l) {
        double size = 0;
        for (int g = 0; g < RadialNodes.COUNT; g++) {
            size = Math.max(size, Math.hypot(re[l][g], im[l][g]));
        }
        return size;
    }

    private int symmetry() {
        double scale = size(0);
        int common = 0;
        for (int l = 1; l < HARMONICS; l++) {
            if (size(l) > NOTHING * scale) {
                common = org.apache.commons.math3.util.ArithmeticUtils.gcd(common, l);
            }
        }
        return common;
    }

    /** Turns the section so that a mirror, if it has one, lies along an axis; whether every weight is then real. */
    private boolean turnToMirror() {
        int strongest = fold;
        for (int l = fold; l < HARMONICS; l += fold) {
            if (size(l) > 0.3 * size(strongest) * (l == fold ? 1 : 10)) {
                strongest = l;
            }
        }
        int g = 0;
        for (int k = 1; k < RadialNodes.COUNT; k++) {
            g = Math.hypot(re[strongest][k], im[strongest][k]) > Math.hypot(re[strongest][g], im[strongest][g]) ? k : g;
        }
        double angle = Math.atan2(im[strongest][g], re[strongest][g]) / strongest;
        boolean real = true;
        for (int l = fold; l < HARMONICS; l += fold) {
            double cos = Math.cos(l * angle);
            double sin = Math.sin(l * angle);
            for (int k = 0; k < RadialNodes.COUNT; k++) {
                double turned = re[l][k] * cos + im[l][k] * sin;
                im[l][k] = im[l][k] * cos - re[l][k] * sin;
                re[l][k] = turned;
                real &= Math.abs(im[l][k]) < NOTHING * size(0);
            }
        }
        return real;
    }

    /** Order of the rotational symmetry; 0 for a circle about the axis. */
    int fold() {
        return fold;
    }

    /** Whether every weight is real, as in a section with a mirror. */
    boolean mirrored() {
        return mirrored || fold == 0;
    }

    /** Real part of a harmonic's weights, not negative l. */
    double[] re(int l) {
        return re[l];
    }

    /** Imaginary part of a harmonic's weights, not negative l. */
    double[] im(int l) {
        return im[l];
    }
}
