package org.taperwright.mechanics.bench;

import java.util.List;
import java.util.Optional;

/**
 * The twisting test: the last 3 mm held, the handle end turned.
 *
 * @param twistRadPerNmm elastic twist of the free blade per torque, rad per N mm
 * @param yieldTorqueNmm torque at which the peak shear first reaches the shear yield, N mm
 * @param plasticTorqueNmm fully plastic torque of the weakest free level, N mm
 * @param weakestLevelMm that level, mm from the tip
 * @param curve torque against angle: elastic, then fully plastic
 * @param limit the standard's least torque for this size, if it has one
 */
public record TwistingResult(
        double twistRadPerNmm,
        double yieldTorqueNmm,
        double plasticTorqueNmm,
        double weakestLevelMm,
        List<CurvePoint> curve,
        Optional<StandardLimit> limit) {
    public TwistingResult {
        curve = List.copyOf(curve);
    }
}
