package org.taperwright.demo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.taperwright.library.exchange.DemoLibrary;
import org.taperwright.library.exchange.ReadResult;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Sequence;

/** The demo library's things, by identifier and by record. */
final class DemoThings {
    private final Map<ThingId, Record> byId = new LinkedHashMap<>();

    private DemoThings() {}

    static DemoThings read() {
        DemoThings things = new DemoThings();
        if (DemoLibrary.load() instanceof ReadResult.Read read) {
            read.things().forEach(thing -> things.byId.put(thing.id(), thing.thing()));
            return things;
        }
        throw new AssertionError("the demo library is refused");
    }

    <T extends Record> List<T> all(Class<T> type) {
        return byId.values().stream().filter(type::isInstance).map(type::cast).toList();
    }

    <T extends Record> T thing(String id, Class<T> type) {
        return thing(new ThingId(id), type);
    }

    <T extends Record> T thing(ThingId id, Class<T> type) {
        return type.cast(byId.get(id));
    }

    <T extends Record> Map<ThingId, T> byId(Class<T> type) {
        Map<ThingId, T> found = new LinkedHashMap<>();
        byId.forEach((id, thing) -> {
            if (type.isInstance(thing)) {
                found.put(id, type.cast(thing));
            }
        });
        return found;
    }

    ArrangedSequence arranged(Sequence sequence) {
        return new ArrangedSequence(
                sequence,
                thing(sequence.canal().orElseThrow(), Canal.class),
                sequence.motor().map(id -> thing(id, Motor.class)),
                sequence.steps().stream()
                        .map(step -> step.uses().map(id -> thing(id, Instrument.class)))
                        .toList());
    }
}
