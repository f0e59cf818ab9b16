package org.taperwright.mechanics.uncertainty;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.util.MathArrays;
import org.taperwright.mechanics.quantity.Band;

/**
 * Samples of the unit cube that have each constant in every one of {@value #SAMPLES} equal slices once, by McKay, Beckman
 * and Conover, Technometrics 21 (1979). The seed is {@value #SEED}, so every run gives the same bands.
 */
public final class LatinHypercube {
    /** Number of samples. */
    public static final int SAMPLES = 200;
    /** Seed of the generator (WELL19937c). */
    public static final int SEED = 20260101;

    private final double[][] shares;

    /** A cube of so many constants. */
    public LatinHypercube(int constants) {
        RandomGenerator random = new Well19937c(SEED);
        shares = new double[SAMPLES][constants];
        for (int c = 0; c < constants; c++) {
            int[] slices = MathArrays.natural(SAMPLES);
            MathArrays.shuffle(slices, random);
            for (int s = 0; s < SAMPLES; s++) {
                shares[s][c] = (slices[s] + random.nextDouble()) / SAMPLES;
            }
        }
    }

    /** The 5 to 95 % band of a value computed from the constants' shares. */
    public Band band(ToDoubleFunction<double[]> value) {
        double[] values = Arrays.stream(shares)
                .mapToDouble(sample -> value.applyAsDouble(sample.clone()))
                .sorted()
                .toArray();
        return new Band(values[SAMPLES / 20], values[SAMPLES - 1 - SAMPLES / 20]);
    }
}
