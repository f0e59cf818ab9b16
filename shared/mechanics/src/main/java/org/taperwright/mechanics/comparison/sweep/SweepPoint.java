package org.taperwright.mechanics.comparison.sweep;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.work.Fault;

/**
 * A design at one setting of a parameter.
 *
 * @param setting the setting
 * @param values by metric; empty where the design cannot be computed
 * @param faults what prevents that; empty where it could
 */
public record SweepPoint(Setting setting, Map<Metric, Double> values, List<Fault> faults) {
    public SweepPoint {
        values = Map.copyOf(values);
        faults = List.copyOf(faults);
    }

    /** The value of a metric, if the design could be computed. */
    public OptionalDouble value(Metric metric) {
        Double value = values.get(metric);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
