package org.taperwright.mechanics.comparison.sweep;

import java.util.List;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.work.Progress;

/**
 * Metrics along one parameter of a design, all else as it is. Values without bands: what differs between two points of one
 * design is far better known than either.
 *
 * @param design the design moved
 * @param parameter the parameter
 * @param here the design as it is
 * @param points in the parameter's order
 */
public record Sweep(Design design, DesignParameter parameter, SweepPoint here, List<SweepPoint> points) {
    public Sweep {
        points = List.copyOf(points);
    }

    /**
     * Sweeps a parameter over its whole range.
     *
     * @param count how many values of an amount, at least two
     */
    public static Sweep of(
            Design design,
            KnownAlloys alloys,
            DesignParameter parameter,
            int count,
            List<Metric> metrics,
            Progress progress) {
        if (count < 2) {
            throw new IllegalArgumentException("a sweep of " + count + " values");
        }
        Points points = new Points(alloys, metrics, progress);
        List<SweepPoint> swept = points.at(parameter.settings(design, count));
        return new Sweep(design, parameter, points.here(design, parameter), swept);
    }
}
