package org.taperwright.mechanics.bench;

import java.util.List;
import java.util.Optional;

/**
 * The twisting test: the last 3 mm held, the instrument turned where its handle begins.
 *
 * @param twistRadPerNmm elastic twist per torque between there and the held tip, rad per N mm
 * @param yieldTorqueNmm torque at which the peak shear first reaches the shear yield, N mm
 * @param plasticTorqueNmm fully plastic torque of the weakest free level at the shear yield, without hardening, N mm
 * @param fractureTorqueNmm torque at fracture, N mm
 * @param fractureAngleDeg angle turned then, degrees
 * @param weakestLevelMm where it breaks, mm from the tip
 * @param curve torque against angle, up to fracture
 * @param limit the standard's least torque for this size, if it has one
 */
public record TwistingResult(
        double twistRadPerNmm,
        double yieldTorqueNmm,
        double plasticTorqueNmm,
        double fractureTorqueNmm,
        double fractureAngleDeg,
        double weakestLevelMm,
        List<CurvePoint> curve,
        Optional<StandardLimit> limit) {
    public TwistingResult {
        curve = List.copyOf(curve);
    }
}
