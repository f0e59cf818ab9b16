package org.taperwright.mechanics.comparison;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** The metrics that service lines register, in the order of their groups and places. */
public final class Metrics {
    /** Identifier of the metric that stands for flexibility in the trade-off. */
    public static final String FLEXIBILITY = "flexibility";
    /** Identifier of the metric that stands for cutting in the trade-off. */
    public static final String CUTTING = "cutting";

    private static final List<Metric> ALL = ServiceLoader.load(Metric.class, Metrics.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get)
            .sorted(Comparator.comparing(Metric::group)
                    .thenComparing(Metric::order)
                    .thenComparing(Metric::id))
            .toList();

    private Metrics() {}

    /** All metrics, grouped and ordered. */
    public static List<Metric> all() {
        return ALL;
    }

    /** The metric with an identifier. */
    public static Optional<Metric> find(String id) {
        return ALL.stream().filter(metric -> metric.id().equals(id)).findFirst();
    }
}
