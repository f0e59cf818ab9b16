package org.taperwright.mechanics.uncertainty;

import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;

/**
 * A constant with what is known of it.
 *
 * @param name its name among all constants of the program: the same name has the same draws everywhere
 * @param value its value, which stands for its median
 * @param band its 5 to 95 %; none where it is known
 */
public record UncertainConstant(String name, double value, Optional<Band> band) {
    private static final double EDGE = 0.05;

    /** How far a share of all, 0 to 1, lies from the median, in the distance of the band's edge. */
    static double beyond(double share) {
        return (share - 0.5) / (0.5 - EDGE);
    }

    /** The value below which a share of all lie: straight through the median and the edge, and on. */
    public double at(double share) {
        return towards(beyond(share));
    }

    /** The value on the way from the median (0) to the band's edge (1 above, -1 below). */
    double towards(double beyond) {
        return band.map(b -> value + Math.abs(beyond) * ((beyond < 0 ? b.low() : b.high()) - value))
                .orElse(value);
    }
}
