package org.taperwright.mechanics.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.quantity.Reading;

/**
 * Sets designs side by side: every metric's value and its ratio to the datum's, and the designs that no other dominates
 * in flexibility and cutting.
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
        double[] flexibility = values(Metrics.FLEXIBILITY, columns);
        double[] cutting = values(Metrics.CUTTING, columns);
        return new Comparison(columns, datum, rows, undominated(flexibility, cutting));
    }

    private static ComparisonRow row(Metric metric, List<Assessment> columns, int datum) {
        List<Reading> readings = columns.stream().map(metric::read).toList();
        double reference = readings.get(datum).value();
        return new ComparisonRow(
                metric,
                readings.stream()
                        .map(reading -> new ComparisonCell(reading, ratio(reading.value(), reference)))
                        .toList());
    }

    /** The value over the datum's; of angles below zero a ratio would read backwards, so there is none. */
    private static OptionalDouble ratio(double value, double datum) {
        if (datum <= 0 || value < 0) {
            return OptionalDouble.empty();
        }
        double ratio = value / datum;
        return Double.isFinite(ratio) ? OptionalDouble.of(ratio) : OptionalDouble.empty();
    }

    private static double[] values(String metricId, List<Assessment> columns) {
        Metric metric = Metrics.find(metricId)
                .orElseThrow(() -> new IllegalStateException("no metric is registered as " + metricId));
        return columns.stream().mapToDouble(metric::value).toArray();
    }

    /** For each point, whether no other is at least as great in both and greater in one. */
    static List<Boolean> undominated(double[] first, double[] second) {
        List<Boolean> marks = new ArrayList<>();
        for (int i = 0; i < first.length; i++) {
            boolean dominated = false;
            for (int j = 0; j < first.length; j++) {
                boolean asGood = first[j] >= first[i] && second[j] >= second[i];
                dominated |= asGood && (first[j] > first[i] || second[j] > second[i]);
            }
            marks.add(!dominated);
        }
        return marks;
    }
}
