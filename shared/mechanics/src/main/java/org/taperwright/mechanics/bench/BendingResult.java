package org.taperwright.mechanics.bench;

import java.util.List;
import java.util.Optional;

/**
 * The bending test: clamped 3 mm from the tip, loaded across the undeformed axis until the chord stands at 45 degrees.
 *
 * @param momentNmm moment at the clamp at 45 degrees, N mm
 * @param forceN force then, N
 * @param endSlopeDeg slope at the loaded point then, degrees
 * @param curve moment at the clamp against the chord's angle
 * @param limit the standard's greatest moment for this size, if it has one
 */
public record BendingResult(
        double momentNmm, double forceN, double endSlopeDeg, List<CurvePoint> curve, Optional<StandardLimit> limit) {
    public BendingResult {
        curve = List.copyOf(curve);
    }
}
