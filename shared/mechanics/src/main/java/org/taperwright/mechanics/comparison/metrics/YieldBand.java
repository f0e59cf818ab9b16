package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/** Bands of what is proportional to the alloy's yield: the yield's own band, to scale. */
final class YieldBand {
    private YieldBand() {}

    /** A torque computed with the alloy's yield, within the band that the yield's spread gives it. */
    static Reading around(double torqueNmm, Alloy alloy) {
        double perYield = torqueNmm / alloy.yieldMpa();
        Band band = new Band(
                perYield * alloy.yieldBand().low(), perYield * alloy.yieldBand().high());
        return new Reading(torqueNmm, Optional.of(band));
    }
}
