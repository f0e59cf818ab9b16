package org.taperwright.mechanics.comparison;

import java.util.List;
import org.taperwright.mechanics.assessment.Assessment;

/**
 * Metrics by designs.
 *
 * @param columns the designs compared, in the user's order
 * @param datum index of the column that ratios are taken against
 * @param rows one for each metric, grouped and ordered
 * @param tradeOff flexibility against cutting: which columns no other dominates, and how sure that is
 */
public record Comparison(List<Assessment> columns, int datum, List<ComparisonRow> rows, TradeOff tradeOff) {
    public Comparison {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }
}
