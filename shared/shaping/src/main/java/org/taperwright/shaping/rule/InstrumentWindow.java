package org.taperwright.shaping.rule;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.SetAngles;

/** A step set to a speed, torque limit or motion that its instrument is not made for. */
public final class InstrumentWindow implements StepRule {
    @Override
    public String id() {
        return "instrument-window";
    }

    @Override
    public String explanation() {
        return "A step keeps to its instrument's speed, torque limit, angles and motion.";
    }

    @Override
    public String source() {
        return "the maker's instructions, as entered with the instrument";
    }

    @Override
    public void check(
            ArrangedSequence arranged, InstrumentStep step, Instrument instrument, String place, List<Fault> faults) {
        compare(place + ".speedRpm", "the speed", step.speedRpm(), instrument.speedRpm(), Shown::rpm, faults);
        compare(
                place + ".torqueNmm",
                "the torque limit",
                step.torqueNmm(),
                instrument.torqueNmm(),
                Shown::torque,
                faults);
        compare(
                place + ".angles.cuttingDeg",
                "the cutting angle",
                step.angles().map(SetAngles::cuttingDeg),
                instrument.reciprocation().map(Reciprocation::cuttingDeg),
                Shown::degrees,
                faults);
        compare(
                place + ".angles.releasingDeg",
                "the releasing angle",
                step.angles().map(SetAngles::releasingDeg),
                instrument.reciprocation().map(Reciprocation::releasingDeg),
                Shown::degrees,
                faults);
        if (step.motion() != instrument.design().motion()) {
            faults.add(Fault.unusual(
                    place + ".motion",
                    "the step is " + step.motion().word() + ", the instrument is meant for "
                            + instrument.design().motion().word(),
                    "follow the maker's instructions on motion"));
        }
    }

    private static void compare(
            String where,
            String what,
            Optional<Double> set,
            Optional<Window> allowed,
            DoubleFunction<String> written,
            List<Fault> faults) {
        if (set.isEmpty() || allowed.isEmpty() || allowed.get().holds(set.get())) {
            return;
        }
        faults.add(Fault.unusual(
                where,
                what + " of " + written.apply(set.get()) + " is outside what the instrument is made for",
                "set " + written.apply(allowed.get().least()) + " to "
                        + written.apply(allowed.get().most())));
    }
}
