package org.taperwright.mechanics.comparison;

import java.util.List;
import org.taperwright.mechanics.assessment.Assessment;

/**
 * Metrics by designs.
 *
 * @param columns the designs compared, in the user's order
 * @param datum index of the column that ratios are taken against
 * @param rows one for each metric, grouped and ordered
 * @param undominated for each column, whether no other is at least as good in flexibility and cutting and better in one
 */
public record Comparison(List<Assessment> columns, int datum, List<ComparisonRow> rows, List<Boolean> undominated) {
    public Comparison {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        undominated = List.copyOf(undominated);
    }
}
