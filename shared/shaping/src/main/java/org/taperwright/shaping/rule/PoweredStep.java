package org.taperwright.shaping.rule;

import java.util.List;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;

/** A powered step needs a motor and settings; a hand step has none. */
public final class PoweredStep implements StepRule {
    @Override
    public String id() {
        return "powered-step";
    }

    @Override
    public String explanation() {
        return "A powered step needs a motor, a speed and a torque limit; a hand step has none of them.";
    }

    @Override
    public String source() {
        return COMMON_PRACTICE;
    }

    @Override
    public void check(
            ArrangedSequence arranged, InstrumentStep step, Instrument instrument, String place, List<Fault> faults) {
        if (instrument.drive() == Drive.HAND) {
            if (step.speedRpm().isPresent() || step.torqueNmm().isPresent()) {
                faults.add(Fault.unusual(
                        place + ".speedRpm",
                        "a hand instrument has a motor's speed or torque limit set",
                        "leave both empty, or take a powered instrument"));
            }
            return;
        }
        if (arranged.motor().isEmpty()) {
            faults.add(Fault.unusual(
                    place + ".instrument",
                    "a powered instrument, but the sequence has no motor",
                    "choose a motor for the sequence"));
        }
        if (step.speedRpm().isEmpty()) {
            faults.add(Fault.unusual(
                    place + ".speedRpm",
                    "no speed is set",
                    "set a speed within the instrument's and the motor's range"));
        }
        if (step.torqueNmm().isEmpty()) {
            faults.add(Fault.unusual(
                    place + ".torqueNmm",
                    "no torque limit is set",
                    "set a torque limit within the instrument's and the motor's range"));
        }
    }
}
