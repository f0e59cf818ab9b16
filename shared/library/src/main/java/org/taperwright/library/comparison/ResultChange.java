package org.taperwright.library.comparison;

import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.Design;

/**
 * A number that is no longer what was kept.
 *
 * @param metric the metric
 * @param design the design as it is now
 * @param designChanged whether the design has been edited since, which may be the whole reason
 * @param then the number kept
 * @param now the number now
 */
public record ResultChange(Metric metric, Design design, boolean designChanged, double then, double now) {
    /** Change as a share of the number kept; of a number that was zero, its size. */
    public double share() {
        return then == 0 ? Math.abs(now) : Math.abs(now / then - 1);
    }
}
