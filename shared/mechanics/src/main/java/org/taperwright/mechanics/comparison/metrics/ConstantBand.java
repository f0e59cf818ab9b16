package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.LawConstant;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/** Bands of what is nearly proportional to a constant of the alloy's law: the constant's own band, to scale. */
final class ConstantBand {
    private ConstantBand() {}

    /** A value within the band that the constant's spread gives it; without one where the constant has none. */
    static Reading around(double value, Alloy alloy, LawConstant constant) {
        Reading known = alloy.constants().get(constant.name());
        Optional<Band> band = known == null || !(known.value() > 0)
                ? Optional.empty()
                : known.band().map(b -> new Band(value * b.low() / known.value(), value * b.high() / known.value()));
        return new Reading(value, band);
    }
}
