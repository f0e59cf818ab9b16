package org.taperwright.shaping.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

class BandedCholeskyTest {
    private static final int ROWS = 23;

    /** Against the dense decomposition of Commons Math. */
    @Test
    void aBandIsSolvedAsADenseMatrixIs() {
        Random random = new Random(4);
        double[][] dense = new double[ROWS][ROWS];
        double[] band = BandedCholesky.band(ROWS);
        double[] b = new double[ROWS + BandedCholesky.PAD];
        for (int i = 0; i < ROWS; i++) {
            b[i + BandedCholesky.PAD] = random.nextGaussian();
            for (int d = 0; d < BandedCholesky.WIDTH && d <= i; d++) {
                double value = d == 0 ? 12 : random.nextGaussian();
                dense[i][i - d] = value;
                dense[i - d][i] = value;
                band[BandedCholesky.WIDTH * (i + BandedCholesky.PAD) + d] = value;
            }
        }
        RealVector right = new ArrayRealVector(b).getSubVector(BandedCholesky.PAD, ROWS);
        RealVector expected = new CholeskyDecomposition(new Array2DRowRealMatrix(dense))
                .getSolver()
                .solve(right);
        assertThat(BandedCholesky.factor(band, ROWS)).isTrue();
        BandedCholesky.solve(band, b, ROWS);
        for (int i = 0; i < ROWS; i++) {
            assertThat(b[i + BandedCholesky.PAD]).isEqualTo(expected.getEntry(i), within(1e-12));
        }
    }

    @Test
    void aMatrixThatIsNotPositiveDefiniteIsRefused() {
        double[] band = BandedCholesky.band(2);
        band[BandedCholesky.WIDTH * BandedCholesky.PAD] = 1;
        band[BandedCholesky.WIDTH * (BandedCholesky.PAD + 1)] = 1;
        band[BandedCholesky.WIDTH * (BandedCholesky.PAD + 1) + 1] = 2;
        assertThat(BandedCholesky.factor(band, 2)).isFalse();
    }
}
