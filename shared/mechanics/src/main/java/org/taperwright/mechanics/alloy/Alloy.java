package org.taperwright.mechanics.alloy;

import org.taperwright.mechanics.quantity.Band;

/**
 * An alloy with the constants that a linear law needs; further laws stand beside it.
 *
 * @param id identifier in the JSON form
 * @param label name for people
 * @param youngMpa Young's modulus, MPa
 * @param youngBand 5 to 95 % of Young's modulus, MPa
 * @param poisson Poisson's ratio
 * @param yieldMpa tensile yield or plateau stress, MPa
 * @param yieldBand 5 to 95 % of it, MPa
 * @param ultimateMpa tensile strength, MPa
 * @param superelastic whether it is a nickel-titanium alloy (twisting the blank is then unusual)
 * @param source where the numbers come from and how they are known
 * @param validity where they hold
 */
public record Alloy(
        String id,
        String label,
        double youngMpa,
        Band youngBand,
        double poisson,
        double yieldMpa,
        Band yieldBand,
        double ultimateMpa,
        boolean superelastic,
        String source,
        String validity) {
    /** Shear modulus {@code E / (2 (1 + nu))}, MPa. */
    public double shearModulusMpa() {
        return youngMpa / (2 * (1 + poisson));
    }

    /** Shear yield by von Mises, {@code Y / sqrt 3}, MPa. */
    public double shearYieldMpa() {
        return yieldMpa / Math.sqrt(3);
    }
}
