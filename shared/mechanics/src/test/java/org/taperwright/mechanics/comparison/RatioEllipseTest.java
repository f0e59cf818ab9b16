package org.taperwright.mechanics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.uncertainty.Sampled;

class RatioEllipseTest {
    private static final Sampled ACROSS = drawn(1, 0.2, 0);
    /** Leans against the first: correlation -0.6. */
    private static final Sampled UP = drawn(2, 0.3, -0.6);

    /** Normal logarithms: the mean square of the second is 0.3² and its covariance with the first -0.6 · 0.2 · 0.3. */
    @Test
    void itHasTheCovarianceOfThePairedLogarithms() {
        RatioEllipse ellipse = RatioEllipse.of(ACROSS, UP).orElseThrow();
        assertThat(Math.sqrt(ellipse.varianceAcross())).isCloseTo(0.2, within(0.03));
        assertThat(Math.sqrt(ellipse.varianceUp())).isCloseTo(0.3, within(0.045));
        assertThat(ellipse.covariance() / Math.sqrt(ellipse.varianceAcross() * ellipse.varianceUp()))
                .isCloseTo(-0.6, within(0.1));
    }

    /** Of normal samples 90 % lie within; with 200 of them within 5 % of that (three standard errors of a share). */
    @Test
    void itHoldsNineOfTenSamples() {
        RatioEllipse ellipse = RatioEllipse.of(ACROSS, UP).orElseThrow();
        double determinant = ellipse.varianceAcross() * ellipse.varianceUp() - Math.pow(ellipse.covariance(), 2);
        double inside = ACROSS.with(UP, (across, up) -> {
                    double x = Math.log(across) - ellipse.across();
                    double y = Math.log(up) - ellipse.up();
                    double square = (ellipse.varianceUp() * x * x
                                    - 2 * ellipse.covariance() * x * y
                                    + ellipse.varianceAcross() * y * y)
                            / determinant;
                    // -2 ln 0.1 is the 90 % point of chi-square with two degrees of freedom
                    return square <= -2 * Math.log(0.1) ? 1 : 0;
                })
                .mean();
        assertThat(inside).isCloseTo(0.9, within(0.064));
        assertThat(ellipse.edge(36)).allSatisfy(point -> {
            double x = Math.log(point.across()) - ellipse.across();
            double y = Math.log(point.up()) - ellipse.up();
            double square =
                    (ellipse.varianceUp() * x * x - 2 * ellipse.covariance() * x * y + ellipse.varianceAcross() * y * y)
                            / determinant;
            assertThat(square).isCloseTo(-2 * Math.log(0.1), within(1e-9));
        });
    }

    @Test
    void theDatumAndRatiosThatHangOnNothingUncertainHaveNone() {
        assertThat(RatioEllipse.of(Sampled.known(1), Sampled.known(2))).isEmpty();
        assertThat(RatioEllipse.of(ACROSS.over(ACROSS), UP.over(UP))).isEmpty();
        assertThat(RatioEllipse.of(ACROSS.map(value -> -value), UP)).isEqualTo(Optional.empty());
    }

    /** A metric that is known makes the ellipse a line. */
    @Test
    void oneKnownRatioFlattensIt() {
        RatioEllipse flat = RatioEllipse.of(Sampled.known(3), UP).orElseThrow();
        assertThat(flat.edge(8)).allSatisfy(point -> assertThat(point.across()).isCloseTo(3, within(1e-12)));
    }

    private static Sampled drawn(long seed, double deviation, double lean) {
        Random first = new Random(1);
        Random own = new Random(seed);
        double[] samples = new double[LatinHypercube.SAMPLES];
        for (int s = 0; s < samples.length; s++) {
            double shared = first.nextGaussian();
            double rest = own.nextGaussian();
            double normal = lean == 0 ? shared : lean * shared + Math.sqrt(1 - lean * lean) * rest;
            samples[s] = Math.exp(deviation * normal);
        }
        return Sampled.of(1, samples);
    }
}
