package org.taperwright.comparer.ui;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;

/**
 * What the map shows, each as its ratio to the datum's.
 *
 * @param across metric of the axis across
 * @param up metric of the upright axis
 * @param size metric that a marker's size goes with, if any
 */
record MapAxes(Metric across, Metric up, Optional<Metric> size) {
    /** Flexibility against cutting, all markers alike. */
    static final MapAxes USUAL = new MapAxes(metric(Metrics.FLEXIBILITY), metric(Metrics.CUTTING), Optional.empty());

    /** Whether designs stand at the same places on other axes, whatever size their markers have. */
    boolean samePlaces(MapAxes other) {
        return across.equals(other.across) && up.equals(other.up);
    }

    /** The metrics it needs. */
    List<Metric> metrics() {
        return size.map(third -> List.of(across, up, third)).orElse(List.of(across, up));
    }

    private static Metric metric(String id) {
        return Metrics.find(id).orElseThrow(() -> new IllegalStateException("no metric is registered as " + id));
    }
}
