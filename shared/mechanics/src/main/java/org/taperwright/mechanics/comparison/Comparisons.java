package org.taperwright.mechanics.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.uncertainty.Sampled;

/**
 * Sets designs side by side: every metric's value and its ratio to the datum's, and the designs that no other dominates
 * in flexibility and cutting.
 *
 * <p>A ratio's band comes from ratios taken sample by sample, with the same draw of a constant for both designs. So dentine,
 * the scatter between like pieces and the constants of one alloy cancel as far as they act alike on both, while two alloys,
 * whose constants were measured apart, are drawn independently. It is the ratio between two designs, not between any two
 * pieces of them.
 */
public final class Comparisons {
    private Comparisons() {}

    /**
     * Compares designs.
     *
     * @param columns at least one
     * @param datum index of the one that ratios are taken against
     */
    public static Comparison of(List<Assessment> columns, int datum) {
        if (datum < 0 || datum >= columns.size()) {
            throw new IndexOutOfBoundsException("datum " + datum + " of " + columns.size() + " designs");
        }
        List<ComparisonRow> rows = Metrics.all().stream()
                .map(metric -> row(metric, columns, datum))
                .toList();
        TradeOff tradeOff = TradeOff.of(columns, metric(Metrics.FLEXIBILITY), metric(Metrics.CUTTING));
        return new Comparison(columns, datum, rows, tradeOff);
    }

    private static ComparisonRow row(Metric metric, List<Assessment> columns, int datum) {
        List<Sampled> sampled = columns.stream().map(metric::sampled).toList();
        List<ComparisonCell> cells = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            Sampled mine = sampled.get(i);
            Reading reading = mine.band().isPresent() ? mine.reading() : metric.read(columns.get(i));
            OptionalDouble ratio = ratio(reading.value(), sampled.get(datum).value());
            Optional<Band> band = i == datum
                    ? mine.band().map(any -> new Band(1, 1))
                    : mine.over(sampled.get(datum)).band();
            boolean shown = ratio.isPresent() && (mine.band().isEmpty() || band.isPresent());
            Reading difference =
                    mine.with(sampled.get(datum), (own, others) -> own - others).reading();
            cells.add(new ComparisonCell(
                    reading, shown ? ratio : OptionalDouble.empty(), shown ? band : Optional.empty(), difference));
        }
        return new ComparisonRow(metric, cells);
    }

    /** The value over the datum's; of angles below zero a ratio would read backwards, so there is none. */
    private static OptionalDouble ratio(double value, double datum) {
        if (datum <= 0 || value < 0) {
            return OptionalDouble.empty();
        }
        double ratio = value / datum;
        return Double.isFinite(ratio) ? OptionalDouble.of(ratio) : OptionalDouble.empty();
    }

    private static Metric metric(String id) {
        return Metrics.find(id).orElseThrow(() -> new IllegalStateException("no metric is registered as " + id));
    }
}
