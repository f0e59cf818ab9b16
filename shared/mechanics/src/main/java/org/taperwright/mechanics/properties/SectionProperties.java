package org.taperwright.mechanics.properties;

/**
 * Numbers of a section of unit diameter. Scale for a diameter d: areas by d^2, I and J by d^4, plastic moments, plastic
 * torque and chip space by their powers (d^3, d^3, d^2), stress factors by d^-3.
 *
 * @param area A
 * @param centroidX centroid, x
 * @param centroidY centroid, y
 * @param iMax larger principal second moment about the centroid, I1
 * @param iMin smaller principal second moment about the centroid, I2
 * @param angleOfIMin direction of the axis about which the second moment is least, rad in (-pi/2, pi/2]; 0 when
 *     the two are equal
 * @param polar Ip = I1 + I2
 * @param torsionConstant St Venant's J
 * @param peakShear c in tau_max = c T / d^3
 * @param peakShearSingular whether a sharp re-entrant corner makes the true peak infinite; peakShear is then the value
 *     with that corner filleted by {@code 0.02 d}
 * @param plasticTorque T_p / (k d^3), sand heap
 * @param plasticMomentLeast least M_p / (Y d^3) over directions
 * @param plasticMomentMost greatest M_p / (Y d^3) over directions
 * @param core diameter of the largest circle about the axis inside the outline
 * @param inscribed diameter of the largest circle inside the outline, anywhere
 * @param chipSpace circle's area less the section's
 */
public record SectionProperties(
        double area,
        double centroidX,
        double centroidY,
        double iMax,
        double iMin,
        double angleOfIMin,
        double polar,
        double torsionConstant,
        double peakShear,
        boolean peakShearSingular,
        double plasticTorque,
        double plasticMomentLeast,
        double plasticMomentMost,
        double core,
        double inscribed,
        double chipSpace) {

    /** Harmonic mean of the principal second moments: the bending compliance averaged over a turn. */
    public double iMean() {
        return 2 * iMax * iMin / (iMax + iMin);
    }
}
