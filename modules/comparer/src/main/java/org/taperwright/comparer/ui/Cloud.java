package org.taperwright.comparer.ui;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.ThingId;

/**
 * Catalogue entries behind the designs compared, each with its metrics' values.
 *
 * @param entries those known
 * @param left how many are still to be computed
 */
record Cloud(List<Entry> entries, int left) {
    /** None. */
    static final Cloud NONE = new Cloud(List.of(), 0);

    Cloud {
        entries = List.copyOf(entries);
    }

    /** All of these, and those of an earlier one that are not among them yet. */
    Cloud over(Cloud earlier) {
        Map<ThingId, Entry> all = new LinkedHashMap<>();
        earlier.entries().forEach(entry -> all.put(entry.id(), entry));
        entries.forEach(entry -> all.put(entry.id(), entry));
        return new Cloud(List.copyOf(all.values()), Math.max(0, left + entries.size() - all.size()));
    }

    /** Those but for some. */
    Cloud without(Collection<ThingId> some) {
        Set<ThingId> gone = new HashSet<>(some);
        return new Cloud(
                entries.stream().filter(entry -> !gone.contains(entry.id())).toList(), left);
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
