package org.taperwright.library.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.taperwright.library.Examples;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Window;

class InstrumentIndexTest {
    private static final ThingId PLAIN = new ThingId("plain");
    private static final InstrumentFilter ALL = InstrumentFilter.ALL;

    private static Entry entry(ThingId id, Record thing) {
        return new Entry(id, thing, 1, Instant.EPOCH, "Add");
    }

    private static Instrument plain(String name, int stock) {
        Instrument example = Examples.instrument();
        return example.draft()
                .name(name)
                .design(Examples.plainDesign(name))
                .supply(example.supply().withStock(stock))
                .instrument();
    }

    private static InstrumentIndex index() {
        Map<ThingId, Entry> entries = new HashMap<>();
        Examples.bundle().items().forEach(item -> entries.put(item.id(), entry(item.id(), item.thing())));
        entries.put(PLAIN, entry(PLAIN, plain("Étude", 0)));
        return InstrumentIndex.of(new Snapshot(1, entries));
    }

    private static List<ThingId> found(InstrumentFilter filter) {
        return index().find(filter).stream().map(Entry::id).toList();
    }

    private static Optional<Window> from(double least, double most) {
        return Optional.of(new Window(least, most));
    }

    @Example
    void everyInstrumentIsFoundByName() {
        assertThat(found(ALL)).containsExactly(Examples.INSTRUMENT_ID, PLAIN);
    }

    @Example
    void eachPartOfAFilterNarrowsTheSearch() {
        assertThat(found(ALL.withWords("  MARSHLIGHT hero ")))
                .as("the name of the other has no such word, its line has")
                .contains(Examples.INSTRUMENT_ID);
        assertThat(found(ALL.withWords("étude"))).containsExactly(PLAIN);
        assertThat(found(ALL.withWords("étude nowhere"))).isEmpty();
        assertThat(found(ALL.withSize(from(25, 25)))).hasSize(2);
        assertThat(found(ALL.withSize(from(26, 140)))).isEmpty();
        assertThat(found(ALL.withTaper(from(0.02, 0.02)))).containsExactly(PLAIN);
        assertThat(found(ALL.withLengthMm(from(26, 31)))).isEmpty();
        assertThat(found(ALL.withFamilies(List.of("triangular", "square")))).containsExactly(PLAIN);
        assertThat(found(ALL.withAlloys(List.of("niti-superelastic")))).containsExactly(Examples.INSTRUMENT_ID);
        assertThat(found(ALL.withMotions(List.of(Motion.REAMING)))).containsExactly(PLAIN);
        assertThat(found(ALL.withInStock(true))).containsExactly(Examples.INSTRUMENT_ID);
    }

    @Example
    void onlyWhatTheMotorDrivesIsFound() {
        assertThat(found(ALL.withMotor(Optional.of(Examples.MOTOR_ID))))
                .as("reaming is done by hand")
                .containsExactly(Examples.INSTRUMENT_ID);
        assertThat(found(ALL.withMotor(Optional.of(new ThingId("gone"))))).isEmpty();
    }

    @Property(tries = 100)
    void theNextIndexFindsWhatANewOneWould(@ForAll @Size(max = 40) List<@IntRange(min = 0, max = 59) Integer> steps) {
        Snapshot snapshot = new Snapshot(0, Map.of());
        InstrumentIndex index = InstrumentIndex.of(snapshot);
        for (int step : steps) {
            ThingId id = new ThingId("t" + step / 6);
            List<Entry> put = new ArrayList<>();
            if (step % 6 > 0) {
                Record thing = step % 6 == 5 ? Examples.motor() : plain("Name " + step % 6, step % 2);
                put.add(new Entry(id, thing, snapshot.revision() + 1, Instant.EPOCH, "Put"));
            }
            snapshot = snapshot.with(snapshot.revision() + 1, put, step % 6 > 0 ? List.of() : List.of(id));
            index = index.next(snapshot);
            InstrumentIndex anew = InstrumentIndex.of(snapshot);
            assertThat(index.find(ALL)).isEqualTo(anew.find(ALL));
            assertThat(index.find(ALL.withInStock(true))).isEqualTo(anew.find(ALL.withInStock(true)));
        }
    }
}
