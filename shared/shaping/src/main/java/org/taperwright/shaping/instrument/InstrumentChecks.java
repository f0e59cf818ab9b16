package org.taperwright.shaping.instrument;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;

/** What is impossible or unusual in a catalogue entry, its design's own checks apart. Common practice, no source. */
public final class InstrumentChecks {
    private InstrumentChecks() {}

    /** Faults of an entry, expiry as of a day. */
    public static List<Fault> check(Instrument instrument, LocalDate today) {
        List<Fault> faults = new ArrayList<>();
        if (instrument.name().isBlank()) {
            faults.add(Fault.impossible("name", "nothing is entered", "expected a designation"));
        }
        if (instrument.usesAllowed() < 0) {
            faults.add(Fault.impossible(
                    "usesAllowed", "found " + instrument.usesAllowed(), "expected 0 or more, 0 when not stated"));
        }
        length(instrument, faults);
        ordered("speedRpm", instrument.speedRpm(), faults);
        ordered("torqueNmm", instrument.torqueNmm(), faults);
        ordered("reciprocation.cuttingDeg", instrument.reciprocation().map(Reciprocation::cuttingDeg), faults);
        ordered("reciprocation.releasingDeg", instrument.reciprocation().map(Reciprocation::releasingDeg), faults);
        motion(instrument, faults);
        instrument.supply().expiry().filter(today::isAfter).ifPresent(expiry -> {
            if (instrument.supply().stock() > 0) {
                faults.add(Fault.unusual(
                        "supply.expiry", "those in stock expired on " + expiry, "take them out of stock"));
            }
        });
        return faults;
    }

    private static void length(Instrument instrument, List<Fault> faults) {
        double length = instrument.design().lengthMm();
        double workingPart = instrument.design().workingPartMm();
        if (!(length > 0 && length >= workingPart)) {
            faults.add(Fault.impossible(
                    "design.lengthMm",
                    "a length of " + Shown.mm(length) + " is less than the working part's " + Shown.mm(workingPart),
                    "expected at least the working part"));
        }
    }

    private static void ordered(String where, Optional<Window> window, List<Fault> faults) {
        window.filter(range -> !(0 <= range.least() && range.least() <= range.most()))
                .ifPresent(range -> faults.add(Fault.impossible(
                        where,
                        "found " + Shown.number(range.least()) + " to " + Shown.number(range.most()),
                        "expected a range that rises from 0 or more")));
    }

    private static void motion(Instrument instrument, List<Fault> faults) {
        Motion motion = instrument.design().motion();
        boolean turned = motion == Motion.ROTATION || motion == Motion.RECIPROCATION;
        if (instrument.drive() == Drive.HAND) {
            if (instrument.speedRpm().isPresent() || instrument.torqueNmm().isPresent()) {
                faults.add(Fault.unusual(
                        "drive", "a hand instrument has a speed or torque window", "leave both out, or powered"));
            }
            if (turned) {
                faults.add(Fault.unusual(
                        "design.motion", "a hand instrument is meant for " + motion.word(), "filing or reaming"));
            }
        } else if (!turned) {
            faults.add(Fault.unusual(
                    "design.motion",
                    "a powered instrument is meant for " + motion.word(),
                    "rotation or reciprocation"));
        }
        if (motion == Motion.RECIPROCATION && instrument.reciprocation().isEmpty()) {
            faults.add(Fault.unusual("reciprocation", "no angles are given", "enter the angles that the maker states"));
        }
        if (motion != Motion.RECIPROCATION && instrument.reciprocation().isPresent()) {
            faults.add(Fault.unusual(
                    "reciprocation", "angles are given, but the motion is " + motion.word(), "leave the angles out"));
        }
    }
}
