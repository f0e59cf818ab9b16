package org.taperwright.comparer.ui;

import java.util.Optional;
import org.taperwright.library.store.MetricRows;
import org.taperwright.mechanics.design.ThingId;

/**
 * How the table is laid out.
 *
 * @param rows which metrics are pinned and which hidden, as saved with the comparison
 * @param hiddenToo whether hidden ones are shown all the same, to be brought back
 * @param furthest the design by whose distance from the datum metrics are sorted; in their groups when absent
 * @param definition which parts of the definitions are shown
 */
record TableView(MetricRows rows, boolean hiddenToo, Optional<ThingId> furthest, Definition definition) {
    /** All metrics in their groups, no definitions. */
    static final TableView USUAL = new TableView(MetricRows.ALL, false, Optional.empty(), Definition.NONE);

    /** Which parts of the designs' definitions the table shows. */
    enum Definition {
        NONE("Metrics only"),
        DIFFERENCES("What differs in the definitions too"),
        ALL("Whole definitions too");

        private final String words;

        Definition(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    TableView with(MetricRows other) {
        return new TableView(other, hiddenToo, furthest, definition);
    }

    TableView showingHidden(boolean show) {
        return new TableView(rows, show, furthest, definition);
    }

    TableView sortedBy(Optional<ThingId> design) {
        return new TableView(rows, hiddenToo, design, definition);
    }

    TableView showing(Definition other) {
        return new TableView(rows, hiddenToo, furthest, other);
    }
}
