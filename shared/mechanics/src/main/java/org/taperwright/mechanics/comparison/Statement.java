package org.taperwright.mechanics.comparison;

import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Standing;

/**
 * One difference of a design from the datum.
 *
 * @param metric the metric
 * @param ratio its ratio to the datum's
 * @param band 5 to 95 % of the ratio, where it has one
 */
public record Statement(Metric metric, double ratio, Optional<Band> band) {
    /** The words, an index called one: {@code snaps at 0.6 of the torque (0.5 to 0.7)}. */
    public String words() {
        String said = metric.saying().orElseThrow().words(ratio);
        String by = metric.standing() == Standing.INDEX ? " by its index" : "";
        String within = band.map(b -> " (" + Saying.twoDigits(b.low()) + " to " + Saying.twoDigits(b.high()) + ")")
                .orElse("");
        return said + by + within;
    }

    /** How far from the datum, either way. */
    double distance() {
        return Math.abs(Math.log(ratio));
    }

    /** Whether it is told apart from the datum: its band leaves out 1, or without a band it differs by a twentieth. */
    boolean toldApart() {
        return band.map(b -> b.low() > 1 || b.high() < 1).orElse(distance() > Math.log(1.05));
    }

    /** Whether it lies on the side that is wanted. */
    boolean wanted() {
        return ratio > 1 == (metric.direction() == Metric.Direction.MORE);
    }
}
