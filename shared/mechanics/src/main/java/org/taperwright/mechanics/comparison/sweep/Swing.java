package org.taperwright.mechanics.comparison.sweep;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.quantity.Band;

/**
 * What moving one parameter does.
 *
 * @param parameter the parameter
 * @param points the settings tried, those that cannot be computed among them
 */
public record Swing(DesignParameter parameter, List<SweepPoint> points) {
    public Swing {
        points = List.copyOf(points);
    }

    /** Least and greatest value of a metric, the design as it is included; absent when none could be computed. */
    public Optional<Band> reach(Metric metric, SweepPoint here) {
        double[] values = Stream.concat(Stream.of(here), points.stream())
                .flatMapToDouble(point -> point.value(metric).stream())
                .sorted()
                .toArray();
        return values.length == 0 ? Optional.empty() : Optional.of(new Band(values[0], values[values.length - 1]));
    }

    /** Width of the reach. */
    public double width(Metric metric, SweepPoint here) {
        return reach(metric, here).map(reach -> reach.high() - reach.low()).orElse(0.0);
    }
}
