package org.taperwright.mechanics.measured;

import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.quantity.Band;

/**
 * A constant after a fit.
 *
 * @param before the constant as the alloy had it
 * @param value the fitted value
 * @param standardError its standard error; zero at an edge, where it was held
 * @param atEdge whether it came to an edge of its band: the measurements would have it beyond
 */
public record FittedConstant(AlloyConstant before, double value, double standardError, boolean atEdge) {
    /** 5 to 95 % by the measurements; the band it had before where it was held at an edge. */
    public Band band() {
        double reach = 1.645 * standardError;
        return atEdge ? before.band() : new Band(Math.max(1e-3 * value, value - reach), value + reach);
    }
}
