package org.taperwright.mechanics.properties;

/**
 * Stiffness of a twisted bar over that of the straight bar of the same section, Poisson's ratio and diameter.
 *
 * @param bending mean curvature's moment, over E times the harmonic mean of the principal second moments
 * @param torsion torque per twist at free length, over G J
 * @param torsionHeld torque per twist at held length, over G J
 * @param extension force per extension with the ends kept from turning, over E A; below 1 even at little twist where the
 *     centroid is off the axis, because a helix straightens
 * @param coupling torque per extension with the ends kept from turning, over E d^3
 */
public record HelicalFactors(double bending, double torsion, double torsionHeld, double extension, double coupling) {
    /** Of a bar without twist. */
    public static final HelicalFactors STRAIGHT = new HelicalFactors(1, 1, 1, 1, 0);

    HelicalFactors times(double share) {
        return new HelicalFactors(
                bending * share, torsion * share, torsionHeld * share, extension * share, coupling * share);
    }

    HelicalFactors plus(HelicalFactors other) {
        return new HelicalFactors(
                bending + other.bending,
                torsion + other.torsion,
                torsionHeld + other.torsionHeld,
                extension + other.extension,
                coupling + other.coupling);
    }
}
