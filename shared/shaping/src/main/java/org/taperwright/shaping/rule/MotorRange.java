package org.taperwright.shaping.rule;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.SetAngles;

/** A motor that cannot do what a step sets, or what its instrument needs where the step sets nothing. */
public final class MotorRange implements StepRule {
    @Override
    public String id() {
        return "motor-range";
    }

    @Override
    public String explanation() {
        return "The motor reaches the speed, torque limit, motion and angles that each powered step needs.";
    }

    @Override
    public String source() {
        return "the motor's and the instrument's data, as entered";
    }

    @Override
    public void check(
            ArrangedSequence arranged, InstrumentStep step, Instrument instrument, String place, List<Fault> faults) {
        if (arranged.motor().isEmpty() || instrument.drive() == Drive.HAND) {
            return;
        }
        Motor motor = arranged.motor().get();
        Need speed = new Need(place + ".speedRpm", "a speed", step.speedRpm(), instrument.speedRpm(), Shown::rpm);
        Need torque = new Need(
                place + ".torqueNmm", "a torque limit", step.torqueNmm(), instrument.torqueNmm(), Shown::torque);
        speed.against(motor.name(), motor.speedRpm(), faults);
        torque.against(motor.name(), motor.torqueNmm(), faults);
        motor.reciprocation()
                .filter(range -> step.motion() == Motion.RECIPROCATION)
                .ifPresent(range -> {
                    new Need(
                                    place + ".angles.cuttingDeg",
                                    "a cutting angle",
                                    step.angles().map(SetAngles::cuttingDeg),
                                    instrument.reciprocation().map(Reciprocation::cuttingDeg),
                                    Shown::degrees)
                            .against(motor.name(), range.cuttingDeg(), faults);
                    new Need(
                                    place + ".angles.releasingDeg",
                                    "a releasing angle",
                                    step.angles().map(SetAngles::releasingDeg),
                                    instrument.reciprocation().map(Reciprocation::releasingDeg),
                                    Shown::degrees)
                            .against(motor.name(), range.releasingDeg(), faults);
                });
        if (step.motion() == Motion.RECIPROCATION && motor.reciprocation().isEmpty()) {
            faults.add(Fault.impossible(
                    place + ".motion",
                    motor.name() + " does not reciprocate",
                    "choose a motor that reciprocates, or an instrument for rotation"));
        }
    }

    private record Need(
            String where, String what, Optional<Double> set, Optional<Window> needed, DoubleFunction<String> written) {

        void against(String motor, Window range, List<Fault> faults) {
            String reach = "it can be set from " + written.apply(range.least()) + " to " + written.apply(range.most());
            if (set.isPresent()) {
                if (!range.holds(set.get())) {
                    faults.add(Fault.impossible(
                            where, motor + " cannot be set to " + what + " of " + written.apply(set.get()), reach));
                }
            } else if (needed.isPresent()
                    && (needed.get().least() > range.most() || needed.get().most() < range.least())) {
                faults.add(Fault.impossible(
                        where,
                        motor + " cannot be set to " + what + " of "
                                + written.apply(needed.get().least()) + " to "
                                + written.apply(needed.get().most()) + ", which the instrument needs",
                        reach));
            }
        }
    }
}
