package org.taperwright.comparer.ui;

import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.comparison.definition.DefinitionRow;

/** A row of the comparison's table. */
sealed interface TableRow {
    /** The heading of the rows that follow. */
    record GroupHeading(String label) implements TableRow {}

    /** A metric with its cells, one for each column that could be computed. */
    record MetricLine(ComparisonRow row) implements TableRow {}

    /** A part of the definitions, one for each design that is in the library. */
    record DefinitionLine(DefinitionRow row) implements TableRow {}
}
