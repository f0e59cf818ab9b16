package org.taperwright.mechanics.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The bending test: clamped 3 mm from the tip, loaded across the undeformed axis until the chord stands at 45 degrees.
 *
 * @param momentNmm moment at the clamp at 45 degrees, N mm
 * @param forceN force then, N
 * @param endSlopeDeg slope at the loaded point then, degrees
 * @param greatestStrain greatest strain on the surface then, the mean over one diameter of length
 * @param strainLevelMm middle of that length, mm from the tip
 * @param setDeg angle of the chord that stays when the load is taken away, degrees; absent for alloys that spring back
 * @param curve moment at the clamp against the chord's angle
 * @param limit the standard's greatest moment for this size, if it has one
 */
public record BendingResult(
        double momentNmm,
        double forceN,
        double endSlopeDeg,
        double greatestStrain,
        double strainLevelMm,
        OptionalDouble setDeg,
        List<CurvePoint> curve,
        Optional<StandardLimit> limit) {
    public BendingResult {
        curve = List.copyOf(curve);
    }
}
