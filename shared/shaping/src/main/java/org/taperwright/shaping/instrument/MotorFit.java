package org.taperwright.shaping.instrument;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Fault.Weight;

/**
 * Whether a motor can drive an instrument.
 *
 * @param reasons why it cannot, as impossible; what could not be compared because it was not entered, as unusual
 * @param speedRpm speeds that both allow, rev/min
 * @param torqueNmm torque limits that both allow, N mm
 * @param reciprocation angles that both allow
 */
public record MotorFit(
        List<Fault> reasons,
        Optional<Window> speedRpm,
        Optional<Window> torqueNmm,
        Optional<Reciprocation> reciprocation) {
    public MotorFit {
        reasons = List.copyOf(reasons);
    }

    /** Whether nothing that was entered says it cannot. */
    public boolean drives() {
        return reasons.stream().noneMatch(fault -> fault.weight() == Weight.IMPOSSIBLE);
    }
}
