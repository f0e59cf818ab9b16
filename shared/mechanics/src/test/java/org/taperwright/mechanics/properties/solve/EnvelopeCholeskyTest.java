package org.taperwright.mechanics.properties.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Solutions of random Hermitian systems, put back into them. */
class EnvelopeCholeskyTest {
    @Property(tries = 200)
    void theSolutionFulfilsTheEquations(
            @ForAll @IntRange(min = 1, max = 90) int size,
            @ForAll @IntRange(max = 40) int band,
            @ForAll boolean complex,
            @ForAll long seed) {
        Random random = new Random(seed);
        int[] last = new int[size];
        for (int k = 0; k < size; k++) {
            last[k] = Math.min(size - 1, k + random.nextInt(band + 1));
        }
        double[][] re = new double[size][size];
        double[][] im = new double[size][size];
        EnvelopeCholesky matrix = new EnvelopeCholesky(last, complex);
        for (int k = 0; k < size; k++) {
            for (int i = k + 1; i <= last[k]; i++) {
                re[i][k] = random.nextGaussian();
                im[i][k] = complex ? random.nextGaussian() : 0;
                re[k][i] = re[i][k];
                im[k][i] = -im[i][k];
                enter(matrix, random.nextBoolean(), i, k, re[i][k], im[i][k]);
            }
        }
        for (int k = 0; k < size; k++) {
            // beyond the sum of its row, which makes the matrix positive definite (S. Gershgorin, 1931)
            re[k][k] = 0.1;
            for (int i = 0; i < size; i++) {
                re[k][k] += i == k ? 0 : Math.hypot(re[i][k], im[i][k]);
            }
            matrix.add(k, k, re[k][k], 0);
        }
        double[] x = random.doubles(size).toArray();
        double[] y = complex ? random.doubles(size).toArray() : new double[size];
        double[] b = new double[size];
        double[] c = new double[size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                b[i] += re[i][j] * x[j] - im[i][j] * y[j];
                c[i] += re[i][j] * y[j] + im[i][j] * x[j];
            }
        }
        assertThat(matrix.factorise()).isTrue();
        matrix.solve(b, c);
        assertThat(b).containsExactly(x, offset(1e-7));
        assertThat(complex ? c : y).containsExactly(y, offset(1e-7));
    }

    private static void enter(EnvelopeCholesky matrix, boolean mirror, int i, int k, double re, double im) {
        if (mirror) {
            matrix.add(k, i, re, -im);
        } else {
            matrix.add(i, k, re, im);
        }
    }

    @Test
    void anIndefiniteMatrixIsRefused() {
        EnvelopeCholesky matrix = EnvelopeCholesky.full(2, false);
        matrix.add(0, 0, 1, 0);
        matrix.add(1, 0, 2, 0);
        matrix.add(1, 1, 1, 0);
        assertThat(matrix.factorise()).isFalse();
    }
}
