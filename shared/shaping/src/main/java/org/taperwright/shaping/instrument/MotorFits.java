package org.taperwright.shaping.instrument;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;

/**
 * Sets instruments against motors by what their makers state: speed, torque limit, motion and angles. A motor fits where
 * its range and the instrument's window have a value in common. Source: the makers' instructions, as entered.
 */
public final class MotorFits {
    private final Motor motor;
    private final Instrument instrument;
    private final List<Fault> reasons = new ArrayList<>();

    private MotorFits(Motor motor, Instrument instrument) {
        this.motor = motor;
        this.instrument = instrument;
    }

    /** Whether a motor can drive an instrument. */
    public static MotorFit of(Motor motor, Instrument instrument) {
        return new MotorFits(motor, instrument).fit();
    }

    /** For each instrument whether a motor can drive it, in the order given. */
    public static Map<ThingId, MotorFit> of(Motor motor, Map<ThingId, Instrument> instruments) {
        Map<ThingId, MotorFit> fits = new LinkedHashMap<>();
        instruments.forEach((id, instrument) -> fits.put(id, of(motor, instrument)));
        return fits;
    }

    private MotorFit fit() {
        if (instrument.drive() == Drive.HAND) {
            reasons.add(Fault.impossible("drive", "is a hand instrument", "take one with a latch"));
            return new MotorFit(reasons, Optional.empty(), Optional.empty(), Optional.empty());
        }
        Motion motion = instrument.design().motion();
        if (motion == Motion.FILING || motion == Motion.REAMING) {
            reasons.add(Fault.impossible(
                    "design.motion",
                    "is meant for " + motion.word() + ", which " + motor.name() + " does not do",
                    "take an instrument for rotation or reciprocation"));
        }
        Optional<Window> speed =
                common("speedRpm", "speed", "run at", instrument.speedRpm(), motor.speedRpm(), Shown::rpm);
        Optional<Window> torque = common(
                "torqueNmm",
                "torque limit",
                "limit the torque to",
                instrument.torqueNmm(),
                motor.torqueNmm(),
                Shown::torque);
        Optional<Reciprocation> angles = motion == Motion.RECIPROCATION ? angles() : Optional.empty();
        return new MotorFit(reasons, speed, torque, angles);
    }

    private Optional<Reciprocation> angles() {
        if (motor.reciprocation().isEmpty()) {
            reasons.add(Fault.impossible(
                    "reciprocation",
                    "reciprocates, which " + motor.name() + " does not",
                    "take a motor that reciprocates"));
            return Optional.empty();
        }
        Reciprocation range = motor.reciprocation().get();
        Optional<Window> cutting = common(
                "reciprocation.cuttingDeg",
                "cutting angle",
                "turn by",
                instrument.reciprocation().map(Reciprocation::cuttingDeg),
                range.cuttingDeg(),
                Shown::degrees);
        Optional<Window> releasing = common(
                "reciprocation.releasingDeg",
                "releasing angle",
                "turn back by",
                instrument.reciprocation().map(Reciprocation::releasingDeg),
                range.releasingDeg(),
                Shown::degrees);
        return cutting.flatMap(cut -> releasing.map(release -> new Reciprocation(cut, release)));
    }

    private Optional<Window> common(
            String where,
            String quantity,
            String deed,
            Optional<Window> needed,
            Window range,
            DoubleFunction<String> written) {
        if (needed.isEmpty()) {
            reasons.add(Fault.unusual(
                    where, "states no " + quantity, "enter what its maker allows before setting the motor"));
            return Optional.empty();
        }
        double least = Math.max(needed.get().least(), range.least());
        double most = Math.min(needed.get().most(), range.most());
        if (least <= most) {
            return Optional.of(new Window(least, most));
        }
        reasons.add(Fault.impossible(
                where,
                "needs a " + quantity + " of " + needed.get().text(written) + ", but " + motor.name() + " can " + deed
                        + ' ' + range.text(written) + " only",
                "take another motor"));
        return Optional.empty();
    }
}
