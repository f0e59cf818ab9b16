package org.taperwright.mechanics.properties.helix;

/**
 * Peak stress of a twisted bar over that of the straight bar of the same section, Poisson's ratio and diameter, for the
 * same moment or torque. Agree with an independent solution of the same equations within 3 %; not yet confirmed by a
 * solid model.
 *
 * @param bendingAxial greatest axial stress in bending, over a turn
 * @param bending greatest von Mises stress in bending, over a turn
 * @param torsion greatest equivalent shear stress (von Mises over the root of three) in torsion at free length
 */
public record PeakStressFactors(double bendingAxial, double bending, double torsion) {
    /** Of a bar without twist. */
    public static final PeakStressFactors STRAIGHT = new PeakStressFactors(1, 1, 1);

    /** The factors a share of the way to others. */
    PeakStressFactors towards(PeakStressFactors other, double share) {
        return new PeakStressFactors(
                bendingAxial + share * (other.bendingAxial - bendingAxial),
                bending + share * (other.bending - bending),
                torsion + share * (other.torsion - torsion));
    }
}
