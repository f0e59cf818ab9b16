package org.taperwright.mechanics.properties.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The reference triangle: its quadrature and its shape functions. */
class CubicTriangleTest {
    private static final double[][] NODES = {
        {0, 0},
        {1, 0},
        {0, 1},
        {1 / 3.0, 0},
        {2 / 3.0, 0},
        {2 / 3.0, 1 / 3.0},
        {1 / 3.0, 2 / 3.0},
        {0, 2 / 3.0},
        {0, 1 / 3.0},
        {1 / 3.0, 1 / 3.0}
    };

    /** {@code int x^p y^q = p! q! / (p + q + 2)!} over the triangle (0,0), (1,0), (0,1): a closed form. */
    @Test
    void quadratureIsExactToTheSixthDegree() {
        for (int p = 0; p <= 6; p++) {
            for (int q = 0; p + q <= 6; q++) {
                double sum = 0;
                for (int point = 0; point < CubicTriangle.POINTS; point++) {
                    double[] n = CubicTriangle.value(point);
                    double x = 0;
                    double y = 0;
                    for (int a = 0; a < CubicTriangle.NODES; a++) {
                        x += n[a] * NODES[a][0];
                        y += n[a] * NODES[a][1];
                    }
                    sum += CubicTriangle.weight(point) * Math.pow(x, p) * Math.pow(y, q);
                }
                assertThat(sum).isCloseTo(factorial(p) * factorial(q) / factorial(p + q + 2), offset(1e-14));
            }
        }
    }

    private static double factorial(int n) {
        return IntStream.rangeClosed(1, n).asDoubleStream().reduce(1, (a, b) -> a * b);
    }

    @Test
    void shapeFunctionsAreOneAtTheirOwnNodeAndZeroAtTheOthers() {
        double[] value = new double[CubicTriangle.NODES];
        double[] slope = new double[CubicTriangle.NODES];
        for (int node = 0; node < CubicTriangle.NODES; node++) {
            CubicTriangle.shape(NODES[node][0], NODES[node][1], value, slope, slope.clone());
            for (int a = 0; a < CubicTriangle.NODES; a++) {
                assertThat(value[a]).isCloseTo(a == node ? 1 : 0, offset(1e-14));
            }
        }
    }
}
