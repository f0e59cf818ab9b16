package org.taperwright.mechanics.uncertainty;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/**
 * The band of a result by {@value #SAMPLES} Latin hypercube samples of the constants it hangs on, always the same ones for the
 * seed {@value #SEED}, so a result has one band and two results that share constants share their samples.
 *
 * <p>A constant's band holds 5 to 95 % of it and its value is the median. Each side is half a normal distribution of its own
 * width: of the logarithm where the whole band is positive, of the constant itself elsewhere. A constant without a band does
 * not vary. Constants vary independently.
 */
public final class Sampling {
    /** Samples to a band. */
    public static final int SAMPLES = 200;
    /** Seed of the samples. */
    public static final long SEED = 20_250_117L;

    private static final int MOST_CONSTANTS = 16;
    private static final double EDGE = 1.6448536269514722;
    private static final double[][] DEVIATES = deviates();

    private Sampling() {}

    /**
     * The result with the band that its constants give it.
     *
     * @param constants at most 16
     * @param result of the constants' values in the same order; finite
     */
    public static Reading reading(List<Reading> constants, ToDoubleFunction<double[]> result) {
        double[] at = constants.stream().mapToDouble(Reading::value).toArray();
        double value = result.applyAsDouble(at);
        double[] results = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            for (int k = 0; k < at.length; k++) {
                at[k] = drawn(constants.get(k), DEVIATES[k][i]);
            }
            results[i] = result.applyAsDouble(at);
        }
        Arrays.sort(results);
        double low = quantile(results, 0.05);
        double high = quantile(results, 0.95);
        return new Reading(value, Optional.of(new Band(Math.min(low, value), Math.max(high, value))));
    }

    /**
     * The same for a result that is costly and positive: it is solved at the value and at both edges of each constant in
     * turn, its logarithm is taken as straight in between and the constants as acting by themselves, and the samples are
     * drawn of that.
     */
    public static Reading solvedAtTheEdges(List<Reading> constants, ToDoubleFunction<double[]> result) {
        double[] at = constants.stream().mapToDouble(Reading::value).toArray();
        double value = result.applyAsDouble(at);
        double[] below = new double[at.length];
        double[] above = new double[at.length];
        for (int k = 0; k < at.length; k++) {
            Reading constant = constants.get(k);
            if (constant.band().isPresent()) {
                at[k] = constant.band().get().low();
                below[k] = Math.log(result.applyAsDouble(at) / value);
                at[k] = constant.band().get().high();
                above[k] = Math.log(result.applyAsDouble(at) / value);
                at[k] = constant.value();
            }
        }
        List<Reading> deviates = constants.stream()
                .map(constant -> new Reading(0, Optional.of(new Band(-EDGE, EDGE))))
                .toList();
        Reading logarithm = reading(deviates, z -> {
            double sum = 0;
            for (int k = 0; k < z.length; k++) {
                sum += Math.abs(z[k]) / EDGE * (z[k] < 0 ? below[k] : above[k]);
            }
            return sum;
        });
        Band band = logarithm.band().orElseThrow();
        return new Reading(value, Optional.of(new Band(value * Math.exp(band.low()), value * Math.exp(band.high()))));
    }

    /** A constant's value at a standard normal deviate. */
    static double drawn(Reading constant, double deviate) {
        if (constant.band().isEmpty()) {
            return constant.value();
        }
        Band band = constant.band().get();
        double edge = deviate < 0 ? band.low() : band.high();
        double share = Math.abs(deviate) / EDGE;
        return band.low() > 0 && constant.value() > 0
                ? constant.value() * Math.exp(share * Math.log(edge / constant.value()))
                : constant.value() + share * (edge - constant.value());
    }

    private static double quantile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) place;
        double t = place - below;
        return t == 0 ? sorted[below] : sorted[below] + t * (sorted[below + 1] - sorted[below]);
    }

    /** One row to a constant: each row has one deviate from each of as many equally likely strata, shuffled. */
    private static double[][] deviates() {
        RandomGenerator random = new Well19937c(SEED);
        NormalDistribution normal = new NormalDistribution(random, 0, 1);
        double[][] rows = new double[MOST_CONSTANTS][SAMPLES];
        for (double[] row : rows) {
            for (int i = 0; i < SAMPLES; i++) {
                double share = (i + random.nextDouble()) / SAMPLES;
                row[i] = normal.inverseCumulativeProbability(Math.max(1e-6, Math.min(1 - 1e-6, share)));
            }
            for (int i = SAMPLES - 1; i > 0; i--) {
                int j = random.nextInt(i + 1);
                double held = row[i];
                row[i] = row[j];
                row[j] = held;
            }
        }
        return rows;
    }
}
