package org.taperwright.library.search;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.MotorFits;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Window;

/** One search: the cheap comparisons first. */
final class FilterMatch {
    private final InstrumentFilter filter;
    private final List<String> words;
    private final Optional<Motor> motor;
    private final Map<Driven, Boolean> drives = new HashMap<>();

    /** All that a motor's fit depends on, which many instruments have in common. */
    private record Driven(
            Drive drive,
            Motion motion,
            Optional<Window> speedRpm,
            Optional<Window> torqueNmm,
            Optional<Reciprocation> reciprocation) {}

    FilterMatch(InstrumentFilter filter, Snapshot snapshot) {
        this.filter = filter;
        this.words = Arrays.stream(filter.words().toLowerCase(Locale.ROOT).split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
        this.motor = filter.motor().flatMap(id -> snapshot.thing(id, Motor.class));
    }

    boolean holds(SoughtInstrument sought) {
        return (!filter.inStock() || sought.inStock())
                && within(filter.size(), sought.size())
                && within(filter.taper(), sought.taper())
                && within(filter.lengthMm(), sought.lengthMm())
                && among(filter.families(), sought.family())
                && among(filter.alloys(), sought.alloy())
                && among(filter.motions(), sought.motion())
                && wordsStandIn(sought.words())
                && (filter.motor().isEmpty() || driven(sought.instrument()));
    }

    private static boolean within(Optional<Window> range, double value) {
        return range.isEmpty() || range.get().holds(value);
    }

    private static <T> boolean among(List<T> wanted, T value) {
        return wanted.isEmpty() || wanted.contains(value);
    }

    private boolean wordsStandIn(String text) {
        for (String word : words) {
            if (!text.contains(word)) {
                return false;
            }
        }
        return true;
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
