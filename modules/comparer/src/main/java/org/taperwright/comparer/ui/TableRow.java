package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.comparison.MetricGroup;

/** A row of the comparison's table: a group's heading, or a metric. */
sealed interface TableRow {
    /** The heading of the rows that follow. */
    record GroupHeading(MetricGroup group) implements TableRow {}

    /** A metric with its cells, one for each column that could be computed. */
    record MetricLine(ComparisonRow row) implements TableRow {}

    /** The rows of a comparison, each group under its heading. */
    static List<TableRow> of(Comparison comparison) {
        List<TableRow> rows = new ArrayList<>();
        Optional<MetricGroup> group = Optional.empty();
        for (ComparisonRow row : comparison.rows()) {
            if (!group.equals(Optional.of(row.metric().group()))) {
                group = Optional.of(row.metric().group());
                rows.add(new GroupHeading(row.metric().group()));
            }
            rows.add(new MetricLine(row));
        }
        return rows;
    }
}
