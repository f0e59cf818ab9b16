package org.taperwright.mechanics.comparison;

import java.util.List;

/** A metric's cells, one for each column. */
public record ComparisonRow(Metric metric, List<ComparisonCell> cells) {
    public ComparisonRow {
        cells = List.copyOf(cells);
    }
}
