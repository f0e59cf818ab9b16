package org.taperwright.library.store;

import java.util.List;
import org.taperwright.mechanics.design.ThingId;

/**
 * The results that a comparison was kept with, so that it can be said whether they would differ now.
 *
 * @param model version of the model that computed them
 * @param designs the designs that could be computed
 * @param rows one for each metric
 */
public record KeptResults(String model, List<KeptDesign> designs, List<KeptRow> rows) {
    public KeptResults {
        designs = List.copyOf(designs);
        rows = List.copyOf(rows);
        int columns = designs.size();
        if (rows.stream().anyMatch(row -> row.values().size() != columns)) {
            throw new IllegalArgumentException("has rows without a value for each of its designs");
        }
    }

    /**
     * A design as it was.
     *
     * @param id its identifier
     * @param fingerprint of its JSON form: equal designs have equal ones
     */
    public record KeptDesign(ThingId id, String fingerprint) {}

    /** A metric's values, one for each design. */
    public record KeptRow(String metric, List<Double> values) {
        public KeptRow {
            values = List.copyOf(values);
        }
    }
}
