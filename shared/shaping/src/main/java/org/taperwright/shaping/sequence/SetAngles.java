package org.taperwright.shaping.sequence;

/**
 * Angles that a motor is set to for reciprocation.
 *
 * @param cuttingDeg turn in which the edges cut, degrees
 * @param releasingDeg turn back, degrees
 */
public record SetAngles(double cuttingDeg, double releasingDeg) {
    /** Where nobody states any (common practice, no source). */
    public static final SetAngles USUAL = new SetAngles(150, 30);
}
