package org.taperwright.shaping.passage.spread;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.uncertainty.Sampled;
import org.taperwright.mechanics.work.ManyTasks;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.passage.stroke.Mesh;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.passage.stroke.SequenceShaping;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.StrokePlan;

/**
 * The bands of a sequence over its uncertain inputs. Each of up to {@value LatinHypercube#SAMPLES} samples shapes the canal anew on the
 * {@link Mesh#COARSE coarse mesh} with its own wear and stiffness; what those do not change (torque by energy, friction and edges;
 * life) is drawn with it. Instruments and the canal are made once. With 200 samples the 95th percentile is itself known within 8 to 10 %,
 * with {@value #FEW}, which do for a first look, within about 20 %; correlations need all.
 *
 * @param quantities each with its band and correlations, the steps' first
 * @param inputs what was varied
 * @param samples how many samples were drawn
 */
public record ShapingBands(List<BandedQuantity> quantities, List<UncertainInput> inputs, int samples) {
    /** How many samples do for a first look. */
    public static final int FEW = 40;

    /** Rank correlation that 200 samples of nothing stay below 19 times in 20: 1.96 / sqrt(199). */
    public static final double CHANCE = 1.96 / Math.sqrt(LatinHypercube.SAMPLES - 1.0);

    public ShapingBands {
        quantities = List.copyOf(quantities);
        inputs = List.copyOf(inputs);
    }

    /**
     * The bands of a sequence.
     *
     * @param shaped the sequence as it shapes its canal at the middle of every input
     */
    public static ShapingBands of(PreparedSequence prepared, ShapedSequence shaped, Progress progress) {
        return of(prepared, shaped, LatinHypercube.SAMPLES, progress);
    }

    /** The same by a number of samples, at least {@value #FEW} and at most {@value LatinHypercube#SAMPLES}. */
    public static ShapingBands of(PreparedSequence prepared, ShapedSequence shaped, int samples, Progress progress) {
        return of(prepared, shaped, ShapedQuantity.of(prepared.instruments().size()), samples, progress);
    }

    /** The bands of those quantities that have a value. */
    public static ShapingBands of(
            PreparedSequence prepared, ShapedSequence shaped, List<ShapedQuantity> quantities, Progress progress) {
        return of(prepared, shaped, quantities, LatinHypercube.SAMPLES, progress);
    }

    private static ShapingBands of(
            PreparedSequence prepared,
            ShapedSequence shaped,
            List<ShapedQuantity> quantities,
            int samples,
            Progress progress) {
        SequenceInputs inputs = new SequenceInputs(prepared);
        List<ShapedQuantity> asked = quantities.stream()
                .filter(quantity -> quantity.value().apply(shaped).isPresent())
                .toList();
        List<double[]> answers = ManyTasks.all(samples, "sample", progress, (sample, inner) -> {
            ShapedSequence drawn = SequenceShaping.of(
                    inputs.sequence(sample),
                    prepared.arranged().canal(),
                    inputs.constants(sample),
                    StrokePlan.USUAL,
                    Mesh.COARSE,
                    inner);
            return asked.stream()
                    .map(quantity -> quantity.value().apply(drawn))
                    .mapToDouble(value -> value.orElse(Double.NaN))
                    .toArray();
        });
        List<BandedQuantity> banded = new ArrayList<>();
        for (int q = 0; q < asked.size(); q++) {
            int place = q;
            double[] drawn = answers.stream().mapToDouble(row -> row[place]).toArray();
            double value = asked.get(q).value().apply(shaped).orElseThrow();
            banded.add(new BandedQuantity(
                    asked.get(q), value, Sampled.of(value, drawn).band(), correlations(inputs, drawn)));
        }
        return new ShapingBands(banded, inputs.all(), samples);
    }

    /** Whether all samples were drawn, so that correlations can be told from chance. */
    public boolean whole() {
        return samples == LatinHypercube.SAMPLES;
    }

    /** The band of a quantity by its name; empty where it has none. */
    public Optional<Band> band(Optional<Integer> step, String name) {
        return quantities.stream()
                .filter(banded -> banded.quantity().name().equals(name)
                        && banded.quantity().step().equals(step))
                .findFirst()
                .flatMap(BandedQuantity::band);
    }

    private static List<BandedQuantity.Correlation> correlations(SequenceInputs inputs, double[] samples) {
        int[] there = IntStream.range(0, samples.length)
                .filter(s -> Double.isFinite(samples[s]))
                .toArray();
        double[] values = Arrays.stream(there).mapToDouble(s -> samples[s]).toArray();
        List<BandedQuantity.Correlation> found = new ArrayList<>();
        for (int i = 0; i < inputs.all().size(); i++) {
            int input = i;
            double[] drawn = Arrays.stream(there)
                    .mapToDouble(s -> inputs.share(input, s))
                    .toArray();
            OptionalDouble rank = rank(values, drawn);
            if (rank.isPresent()) {
                found.add(new BandedQuantity.Correlation(inputs.all().get(i), rank.getAsDouble()));
            }
        }
        return found;
    }

    /** Spearman's coefficient; empty where the values do not vary, or are too few. */
    private static OptionalDouble rank(double[] values, double[] drawn) {
        double[] range = Arrays.stream(values).distinct().limit(2).toArray();
        if (values.length < LatinHypercube.SAMPLES / 2 || range.length < 2) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(new SpearmansCorrelation().correlation(values, drawn));
    }
}
