package org.taperwright.mechanics.uncertainty;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.util.MathArrays;
import org.taperwright.mechanics.work.BoundedCache;

/**
 * Samples of the unit cube that have each constant in every one of {@value #SAMPLES} equal slices once, by McKay, Beckman
 * and Conover, Technometrics 21 (1979). The seed is {@value #SEED} with the constant's name, so every run gives the same
 * bands, and a constant has the same draws in every result that hangs on it: what two results share cancels in their ratio.
 * Constants of different names are drawn independently.
 */
public final class LatinHypercube {
    /** Number of samples. */
    public static final int SAMPLES = 200;
    /** Seed of the generator (WELL19937c). */
    public static final int SEED = 20260101;

    private static final BoundedCache<String, double[]> COLUMNS = new BoundedCache<>(128);

    private final List<double[]> columns;

    private LatinHypercube(List<double[]> columns) {
        this.columns = columns;
    }

    /** The cube of constants by name. */
    public static LatinHypercube of(List<String> constants) {
        return new LatinHypercube(constants.stream()
                .map(name -> COLUMNS.get(name, LatinHypercube::column))
                .toList());
    }

    /** The cube of constants by name. */
    public static LatinHypercube of(String... constants) {
        return of(List.of(constants));
    }

    private static double[] column(String name) {
        RandomGenerator random = new Well19937c(new int[] {SEED, name.hashCode()});
        int[] slices = MathArrays.natural(SAMPLES);
        MathArrays.shuffle(slices, random);
        double[] shares = new double[SAMPLES];
        for (int s = 0; s < SAMPLES; s++) {
            shares[s] = (slices[s] + random.nextDouble()) / SAMPLES;
        }
        return shares;
    }

    /**
     * A value with what every sample makes of it.
     *
     * @param value the value at the middle of every constant
     * @param sample the value at a share of each constant's spread, 0 to 1
     */
    public Sampled sample(double value, ToDoubleFunction<double[]> sample) {
        double[] samples = new double[SAMPLES];
        for (int s = 0; s < SAMPLES; s++) {
            samples[s] = sample.applyAsDouble(shares(s));
        }
        return Sampled.of(value, samples);
    }

    /** Share of each constant's spread in a sample, 0 to 1, in the order of the names. */
    public double[] shares(int sample) {
        return columns.stream().mapToDouble(column -> column[sample]).toArray();
    }
}
