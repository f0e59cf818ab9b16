package org.taperwright.validation.polynomial;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Strain energy of displacements and imposed strains, a polynomial of the second degree in the twist, for Young's modulus
 * one. Hermitian; real where the section has a mirror.
 */
final class EnergyMatrix {
    private final int unknowns;
    private final int size;
    private final double[][][] re;
    private final double @Nullable [][][] im;

    EnergyMatrix(HarmonicWeights weights, List<Field> displacements, List<Field> imposed, double poisson) {
        List<Field> fields = new ArrayList<>(displacements);
        fields.addAll(imposed);
        unknowns = displacements.size();
        size = fields.size();
        re = new double[3][size][size];
        im = weights.mirrored() ? null : new double[3][size][size];
        double mu = 1 / (2 * (1 + poisson));
        double lambda = poisson / ((1 + poisson) * (1 - 2 * poisson));
        double[] own = {lambda + mu, lambda + 2 * mu, mu / 2, mu / 2, mu / 2, mu / 2};
        double[][] product = new double[3][RadialNodes.COUNT];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                Field a = fields.get(i);
                Field b = fields.get(j);
                if (Math.abs(b.order() - a.order()) > 2 * RadialNodes.DEGREE) {
                    continue;
                }
                for (double[] power : product) {
                    java.util.Arrays.fill(power, 0);
                }
                for (int kind = 0; kind < Field.KINDS; kind++) {
                    accumulate(product, a, kind, b, kind, own[kind]);
                }
                accumulate(product, a, Field.S, b, Field.E, lambda);
                accumulate(product, a, Field.E, b, Field.S, lambda);
                enter(weights, i, j, b.order() - a.order(), product);
            }
        }
    }

    private static void accumulate(double[][] product, Field a, int kindA, Field b, int kindB, double factor) {
        double[] f = a.strains()[kindA];
        double[] g = b.strains()[kindB];
        if (f == null || g == null) {
            return;
        }
        double[] target = product[a.powers()[kindA] + b.powers()[kindB]];
        for (int k = 0; k < target.length; k++) {
            target[k] += factor * f[k] * g[k];
        }
    }

    private void enter(HarmonicWeights weights, int i, int j, int difference, double[][] product) {
        double[] wr = weights.re(Math.abs(difference));
        double[] wi = weights.im(Math.abs(difference));
        double sign = difference < 0 ? -1 : 1;
        for (int power = 0; power < 3; power++) {
            double sumRe = 0;
            double sumIm = 0;
            for (int g = 0; g < RadialNodes.COUNT; g++) {
                sumRe += wr[g] * product[power][g];
                sumIm += wi[g] * product[power][g];
            }
            re[power][i][j] = sumRe;
            re[power][j][i] = sumRe;
            if (im != null) {
                im[power][i][j] = sign * sumIm;
                im[power][j][i] = -sign * sumIm;
            }
        }
    }

    /** Energies of the imposed strains, the displacements free, at a twist: the real part. */
    double[][] relaxed(double twist) {
        double[][] atRe = at(re, twist);
        double[] scale = new double[size];
        for (int i = 0; i < size; i++) {
            scale[i] = i < unknowns && atRe[i][i] > 0 ? 1 / Math.sqrt(atRe[i][i]) : 1;
        }
        scale(atRe, scale);
        double[][] atIm = im == null ? null : at(im, twist);
        if (atIm != null) {
            scale(atIm, scale);
        }
        return new PivotedCholesky(atRe, atIm, unknowns).remainder();
    }

    private static double[][] at(double[][][] powers, double twist) {
        int n = powers[0].length;
        double[][] sum = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                sum[i][j] = powers[0][i][j] + twist * (powers[1][i][j] + twist * powers[2][i][j]);
            }
        }
        return sum;
    }

    private static void scale(double[][] matrix, double[] scale) {
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < matrix.length; j++) {
                matrix[i][j] *= scale[i] * scale[j];
            }
        }
    }
}
