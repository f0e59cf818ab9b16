package org.taperwright.mechanics.fatigue;

import java.util.Arrays;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.uncertainty.Spread;

/**
 * A constant of the strain-life law that an alloy may give itself, such as one fitted to lives. The life at the point is told as
 * its power of ten, in which lives are straight. The endurance strain is not among them: near it lives jump to the end of the
 * test, which no least squares tells.
 */
public enum LifeConstant {
    /** Life at a strain amplitude of {@value StrainLife#POINT}. */
    POINT("lifePower", "Life at 3 % strain, as a power of ten", 0),
    /** Exponent beta of {@code eps = a N^-beta}. */
    EXPONENT("lifeExponent", "Exponent of the strain-life law", 1),
    /** Strain borne beyond what plain wire bears. */
    SHIFT("lifeShift", "Strain borne beyond plain wire", 3),
    /** Lives over plain wire's. */
    GAIN("lifeGain", "Lives gained over plain wire", 4);

    /** What share of a spread lies within the 5 to 95 % band. */
    private static final double WITHIN = 0.9;

    private final String id;
    private final String label;
    private final int place;

    LifeConstant(String id, String label, int place) {
        this.id = id;
        this.label = label;
        this.place = place;
    }

    /** Key in the JSON form. */
    public String id() {
        return id;
    }

    /** Name for people. */
    public String label() {
        return label;
    }

    /** The constant of a key. */
    public static Optional<LifeConstant> named(String id) {
        return Arrays.stream(values()).filter(each -> each.id.equals(id)).findFirst();
    }

    /** Its middle and 5 to 95 % band in a law. */
    public Reading of(StrainLife law) {
        Spread spread = law.spreads().get(place);
        double edge = (1 - WITHIN) / 2;
        return new Reading(
                written(spread.middle()),
                Optional.of(new Band(written(spread.at(edge)), written(spread.at(1 - edge)))));
    }

    /** A law with this constant at another value, known within a band about it. */
    StrainLife in(StrainLife law, Reading given) {
        double reach = given.band()
                .map(band -> (band.high() - band.low()) / 2 / WITHIN)
                .orElse(0.0);
        if (this == POINT) {
            return law.with(
                    place, Spread.byRatio(Math.pow(10, given.value() - reach), Math.pow(10, given.value() + reach)));
        }
        // never to zero or below, where there is no law
        double kept = Math.min(reach, WITHIN * Math.abs(given.value()));
        return law.with(place, Spread.even(given.value() - kept, given.value() + kept));
    }

    private double written(double value) {
        return this == POINT ? Math.log10(value) : value;
    }
}
