package org.taperwright.comparer.ui;

import java.util.List;
import java.util.OptionalDouble;
import org.taperwright.mechanics.comparison.Comparison;

/**
 * A logarithmic scale about 1, the same for every bar of a table: twice the datum reaches as far to the right as half
 * of it reaches to the left.
 *
 * @param reach the ratio at the right end; its reciprocal stands at the left end
 */
record RatioScale(double reach) {
    private static final List<Double> REACHES = List.of(1.25, 1.5, 2.0, 3.0, 5.0, 10.0, 20.0, 50.0, 100.0);

    /** The shortest scale that holds every ratio shown of a comparison, up to a hundredfold. */
    static RatioScale of(Comparison comparison) {
        double furthest = comparison.rows().stream()
                .flatMap(row -> row.cells().stream())
                .filter(cell -> cell.reading().value() > 0)
                .map(cell -> cell.ratio())
                .filter(OptionalDouble::isPresent)
                .mapToDouble(ratio -> Math.exp(Math.abs(Math.log(ratio.getAsDouble()))))
                .max()
                .orElse(1);
        double reach = REACHES.stream()
                .filter(candidate -> candidate >= furthest)
                .findFirst()
                .orElse(REACHES.get(REACHES.size() - 1));
        return new RatioScale(reach);
    }

    /** Place of a ratio from -1 (left end) over 0 (the datum) to 1 (right end); held at the ends beyond them. */
    double place(double ratio) {
        return Math.max(-1, Math.min(1, Math.log(Math.max(ratio, Double.MIN_VALUE)) / Math.log(reach)));
    }

    /** Whether a ratio lies beyond the scale's ends, so that its bar cannot show how far. */
    boolean beyond(double ratio) {
        return Math.abs(Math.log(Math.max(ratio, Double.MIN_VALUE))) > Math.log(reach) * (1 + 1e-12);
    }
}
