package org.taperwright.comparer.ui;

import java.util.List;
import java.util.Map;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.ThingId;

/** Catalogue entries behind the designs compared, each with its metrics' values. */
record Cloud(List<Entry> entries) {
    /** None. */
    static final Cloud NONE = new Cloud(List.of());

    Cloud {
        entries = List.copyOf(entries);
    }

    /** A catalogue entry whose design could be computed. */
    record Entry(ThingId id, String name, Map<Metric, Double> values) {
        Entry {
            values = Map.copyOf(values);
        }

        /** The ratio of a metric to the datum's; zero where there is none. */
        double ratio(Metric metric, double datum) {
            double value = values.getOrDefault(metric, 0.0);
            return datum > 0 && value > 0 ? value / datum : 0;
        }
    }
}
