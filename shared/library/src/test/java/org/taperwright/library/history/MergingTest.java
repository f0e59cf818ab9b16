package org.taperwright.library.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Supply;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.Kits;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

class MergingTest {
    private static final ThingId KEPT = new ThingId("kept");
    private static final ThingId TWIN = new ThingId("twin");
    private static final ThingId OTHER = new ThingId("other");
    private static final ThingId SEQUENCE = new ThingId("sequence");
    private static final ThingId KIT = new ThingId("kit");

    @Test
    void theKeptEntryTakesTheStockOfAllAndWhateverReferredToTheOthersRefersToIt() {
        List<Change> changes = Merging.changes(library(2, 3), KEPT, List.of(KEPT, TWIN));

        assertThat(changes).hasSize(4).contains(new Change.Remove(TWIN));
        assertThat(put(changes, KEPT, Instrument.class).supply().stock()).isEqualTo(5);
        assertThat(put(changes, SEQUENCE, Sequence.class).steps())
                .extracting(step -> step.uses().orElseThrow())
                .containsExactly(KEPT, OTHER);
        assertThat(put(changes, KIT, Kit.class).pieces())
                .singleElement()
                .satisfies(piece -> assertThat(piece.instrument()).isEqualTo(KEPT));
    }

    @Test
    void aStockThatWouldBeTooLargeToKeepStaysAtTheMost() {
        List<Change> changes = Merging.changes(library(Supply.MOST, 3), KEPT, List.of(KEPT, TWIN));

        assertThat(put(changes, KEPT, Instrument.class).supply().stock()).isEqualTo(Supply.MOST);
    }

    @Test
    void anEntryThatIsGoneOrAloneMergesNothing() {
        assertThat(Merging.changes(library(2, 3), new ThingId("gone"), List.of(KEPT, TWIN)))
                .isEmpty();
        assertThat(Merging.changes(library(2, 3), KEPT, List.of(KEPT))).isEmpty();
    }

    private static <T extends Record> T put(List<Change> changes, ThingId id, Class<T> type) {
        return changes.stream()
                .filter(change -> change.id().equals(id))
                .map(change -> type.cast(((Change.Put) change).thing()))
                .findFirst()
                .orElseThrow();
    }

    private static Snapshot library(int stock, int twins) {
        Map<ThingId, Record> things = new HashMap<>();
        things.put(KEPT, file(stock));
        things.put(TWIN, file(twins));
        things.put(OTHER, file(1));
        things.put(
                SEQUENCE,
                new Sequence("By hand", Optional.empty(), Optional.empty(), List.of(step(TWIN), step(OTHER)), ""));
        things.put(KIT, Kits.added(new Kit("Chair 2", "", Optional.empty(), List.of(), ""), TWIN, file(1), 1));
        Map<ThingId, Entry> entries = new HashMap<>();
        things.forEach((id, thing) -> entries.put(id, new Entry(id, thing, 1, Instant.EPOCH, "Enter")));
        return new Snapshot(1, entries);
    }

    private static Step step(ThingId instrument) {
        return new InstrumentStep(instrument, 18, Motion.FILING, Optional.empty(), Optional.empty(), 3, "");
    }

    private static Instrument file(int stock) {
        Instrument plain = new Instrument(
                "K-type file 25",
                "Marlowe",
                "Ditch",
                "K-type file",
                Drive.HAND,
                Designs.standard(25, 0.02),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                0,
                "");
        return plain.draft().supply(Supply.NONE.withStock(stock)).instrument();
    }
}
