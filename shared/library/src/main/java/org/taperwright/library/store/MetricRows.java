package org.taperwright.library.store;

import java.util.ArrayList;
import java.util.List;

/**
 * Which of a comparison's metrics, by identifier, are shown and where.
 *
 * @param pinned those that stand above all groups, in their order
 * @param hidden those that are not shown
 */
public record MetricRows(List<String> pinned, List<String> hidden) {
    /** All of them in their groups. */
    public static final MetricRows ALL = new MetricRows(List.of(), List.of());

    public MetricRows {
        pinned = List.copyOf(pinned);
        hidden = List.copyOf(hidden);
    }

    /** With a metric pinned below those that are, or no longer. */
    public MetricRows pin(String metric, boolean pin) {
        return new MetricRows(changed(pinned, metric, pin), hidden);
    }

    /** With a metric hidden, or no longer. */
    public MetricRows hide(String metric, boolean hide) {
        return new MetricRows(pinned, changed(hidden, metric, hide));
    }

    /** With a pinned metric moved by places, up when negative, as far as the ends allow. */
    public MetricRows move(String metric, int places) {
        int from = pinned.indexOf(metric);
        if (from < 0) {
            return this;
        }
        List<String> moved = new ArrayList<>(pinned);
        moved.remove(from);
        moved.add(Math.max(0, Math.min(moved.size(), from + places)), metric);
        return new MetricRows(moved, hidden);
    }

    private static List<String> changed(List<String> list, String metric, boolean there) {
        List<String> changed = new ArrayList<>(list);
        changed.remove(metric);
        if (there) {
            changed.add(metric);
        }
        return changed;
    }
}
