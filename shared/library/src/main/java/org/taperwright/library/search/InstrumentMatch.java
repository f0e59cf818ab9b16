package org.taperwright.library.search;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.MotorFits;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Window;

/**
 * Whether a filter lets an instrument through, its words apart: where those are looked for is for whoever shows the
 * instruments. Made for one walk over a library; the cheap comparisons come first.
 */
public final class InstrumentMatch implements Predicate<Instrument> {
    private final InstrumentFilter filter;
    private final Optional<Motor> motor;
    private final Map<Driven, Boolean> drives = new HashMap<>();

    /** All that a motor's fit depends on, which many instruments have in common. */
    private record Driven(
            Drive drive,
            Motion motion,
            Optional<Window> speedRpm,
            Optional<Window> torqueNmm,
            Optional<Reciprocation> reciprocation) {}

    /** A match in a library; a motor that it no longer has lets none through. */
    public InstrumentMatch(InstrumentFilter filter, Snapshot library) {
        this.filter = filter;
        this.motor = filter.motor().flatMap(id -> library.thing(id, Motor.class));
    }

    @Override
    public boolean test(Instrument instrument) {
        Design design = instrument.design();
        return (!filter.inStock() || instrument.supply().stock() > 0)
                && within(filter.size(), instrument.size())
                && within(
                        filter.taper(),
                        design.taper().isEmpty() ? 0 : design.taper().get(0).taper())
                && within(filter.lengthMm(), design.lengthMm())
                && (filter.families().isEmpty() || filter.families().contains(family(design)))
                && among(filter.alloys(), design.alloy())
                && among(filter.motions(), design.motion())
                && (filter.motor().isEmpty() || driven(instrument));
    }

    private static String family(Design design) {
        return design.sections().isEmpty()
                ? ""
                : design.sections().get(0).shape().family();
    }

    private static boolean within(Optional<Window> range, double value) {
        return range.isEmpty() || range.get().holds(value);
    }

    private static <T> boolean among(List<T> wanted, T value) {
        return wanted.isEmpty() || wanted.contains(value);
    }

    private boolean driven(Instrument instrument) {
        if (motor.isEmpty()) {
            return false;
        }
        Driven key = new Driven(
                instrument.drive(),
                instrument.design().motion(),
                instrument.speedRpm(),
                instrument.torqueNmm(),
                instrument.reciprocation());
        return drives.computeIfAbsent(
                key, any -> MotorFits.of(motor.get(), instrument).drives());
    }
}
