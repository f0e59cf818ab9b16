package org.taperwright.mechanics.comparison;

import java.util.List;
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
    private static final double WORTH_SAYING = Math.log(1.05);

    /** The words, an index called one: {@code snaps at 0.6 of the torque (0.5 to 0.7)}. */
    public String words() {
        String said = metric.saying().orElseThrow().words(ratio);
        String by = metric.standing() == Standing.INDEX ? " by its index" : "";
        String within = band.map(b -> List.of(Saying.twoDigits(b.low()), Saying.twoDigits(b.high())))
                .filter(ends -> !ends.get(0).equals(ends.get(1)))
                .map(ends -> " (" + String.join(" to ", ends) + ")")
                .orElse("");
        return said + by + within;
    }

    /** How far from the datum, either way. */
    double distance() {
        return Math.abs(Math.log(ratio));
    }

    /** Whether it is told apart from the datum: it differs by a twentieth, and its band, if any, leaves out 1. */
    boolean toldApart() {
        return distance() > WORTH_SAYING
                && band.map(b -> b.low() > 1 || b.high() < 1).orElse(true);
    }

    /** Whether it lies on the side that is wanted. */
    boolean wanted() {
        return ratio > 1 == (metric.direction() == Metric.Direction.MORE);
    }
}
