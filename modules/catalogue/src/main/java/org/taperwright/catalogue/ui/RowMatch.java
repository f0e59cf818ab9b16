package org.taperwright.catalogue.ui;

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

/** Whether a filter lets a row of the table through; its words are looked for in all that the table can show of it. */
final class RowMatch implements Predicate<InstrumentRow> {
    private final InstrumentFilter filter;
    private final SearchWords words;
    private final Optional<Motor> motor;
    private final Map<Driven, Boolean> drives = new HashMap<>();

    /** All that a motor's fit depends on, which many instruments have in common. */
    private record Driven(
            Drive drive,
            Motion motion,
            Optional<Window> speedRpm,
            Optional<Window> torqueNmm,
            Optional<Reciprocation> reciprocation) {}

    /** For one walk over the rows of a library; a motor that is gone lets none through. */
    RowMatch(InstrumentFilter filter, Snapshot library) {
        this.filter = filter;
        words = SearchWords.of(filter.words());
        motor = filter.motor().flatMap(id -> library.thing(id, Motor.class));
    }

    /** Whether a filter lets everything through. */
    static boolean all(InstrumentFilter filter) {
        return filter.withWords(filter.words().strip()).equals(InstrumentFilter.ALL);
    }

    /** How many conditions a filter has besides its words. */
    static int conditions(InstrumentFilter filter) {
        int count = filter.inStock() ? 1 : 0;
        for (Optional<?> each : List.of(filter.size(), filter.taper(), filter.lengthMm(), filter.motor())) {
            count += each.isPresent() ? 1 : 0;
        }
        for (List<?> each : List.of(filter.families(), filter.alloys(), filter.motions())) {
            count += each.isEmpty() ? 0 : 1;
        }
        return count;
    }

    @Override
    public boolean test(InstrumentRow row) {
        Instrument instrument = row.instrument();
        Design design = instrument.design();
        return (!filter.inStock() || instrument.supply().stock() > 0)
                && within(filter.size(), row.designation().size())
                && within(filter.taper(), row.designation().taper())
                && within(filter.lengthMm(), design.lengthMm())
                && among(filter.families(), row.family())
                && among(filter.alloys(), design.alloy())
                && among(filter.motions(), design.motion())
                && words.in(row.searched())
                && (filter.motor().isEmpty() || driven(instrument));
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
