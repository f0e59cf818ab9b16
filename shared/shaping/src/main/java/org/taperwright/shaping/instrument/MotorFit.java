package org.taperwright.shaping.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Shown;
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

    /**
     * What both allow, as written: {@code 250 to 350 rpm, 1 to 2.5 N·cm}; absent where nothing is stated by both.
     */
    public Optional<String> settings() {
        List<String> parts = new ArrayList<>();
        speedRpm.ifPresent(speed -> parts.add(speed.text(Shown::rpm)));
        torqueNmm.ifPresent(torque -> parts.add(torque.text(Shown::torque)));
        reciprocation.ifPresent(angles -> {
            parts.add(angles.cuttingDeg().text(Shown::degrees) + " cutting");
            parts.add(angles.releasingDeg().text(Shown::degrees) + " releasing");
        });
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", parts));
    }

    /** Whether nothing that was entered says it cannot. */
    public boolean drives() {
        return reasons.stream().noneMatch(fault -> fault.weight() == Weight.IMPOSSIBLE);
    }
}
