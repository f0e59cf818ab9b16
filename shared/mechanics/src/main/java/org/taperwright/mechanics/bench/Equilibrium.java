package org.taperwright.mechanics.bench;

/**
 * An equilibrium of a clamped rod under a force at its end across the undeformed axis.
 *
 * @param chord angle of the chord from the clamp to the load, rad
 * @param endSlope slope at the load, rad
 * @param forceN force, N
 * @param armMm arm of the force about the clamp, along the undeformed axis, mm
 * @param deflectionMm travel of the load across the undeformed axis, mm
 */
record Equilibrium(double chord, double endSlope, double forceN, double armMm, double deflectionMm) {
    /** Moment at the clamp, N mm. */
    double momentNmm() {
        return forceN * armMm;
    }
}
