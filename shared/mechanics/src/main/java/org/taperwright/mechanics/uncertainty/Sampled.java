package org.taperwright.mechanics.uncertainty;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/**
 * A value with what each sample of a {@link LatinHypercube} makes of it; one that is known has no samples. Two are combined
 * sample by sample, so what they share is in both alike.
 */
public final class Sampled {
    /** Share of the samples beyond each end of the band. */
    private static final int OF = 20;

    private final double value;
    private final double[] samples;

    private Sampled(double value, double[] samples) {
        this.value = value;
        this.samples = samples;
    }

    /** A value that hangs on no uncertain constant. */
    public static Sampled known(double value) {
        return new Sampled(value, new double[0]);
    }

    /** A value with its samples, in the cube's order. */
    public static Sampled of(double value, double[] samples) {
        return new Sampled(value, samples.clone());
    }

    /** The value at the middle of every constant. */
    public double value() {
        return value;
    }

    /** A function of the value, sample by sample. */
    public Sampled map(DoubleUnaryOperator function) {
        return new Sampled(
                function.applyAsDouble(value),
                Arrays.stream(samples).map(function).toArray());
    }

    /** The ratio to another, sample by sample. */
    public Sampled over(Sampled other) {
        return with(other, (mine, others) -> mine / others);
    }

    /** A function of this and another, sample by sample. */
    public Sampled with(Sampled other, DoubleBinaryOperator function) {
        double[] both = new double[Math.max(samples.length, other.samples.length)];
        for (int s = 0; s < both.length; s++) {
            both[s] = function.applyAsDouble(at(s), other.at(s));
        }
        return new Sampled(function.applyAsDouble(value, other.value), both);
    }

    /** Mean over the samples; the value itself of one that is known. */
    public double mean() {
        return Arrays.stream(samples).average().orElse(value);
    }

    private double at(int sample) {
        return samples.length == 0 ? value : samples[sample];
    }

    /**
     * The 5 to 95 % band, which holds the value; none of one that is known, nor where a twentieth of the samples or more
     * give no finite number.
     */
    public Optional<Band> band() {
        if (samples.length == 0) {
            return Optional.empty();
        }
        double[] sorted = samples.clone();
        Arrays.sort(sorted);
        int edge = sorted.length / OF;
        double low = Math.min(value, sorted[edge]);
        double high = Math.max(value, sorted[sorted.length - 1 - edge]);
        return Double.isFinite(low) && Double.isFinite(high) ? Optional.of(new Band(low, high)) : Optional.empty();
    }

    /** The value with its band. */
    public Reading reading() {
        return new Reading(value, band());
    }
}
