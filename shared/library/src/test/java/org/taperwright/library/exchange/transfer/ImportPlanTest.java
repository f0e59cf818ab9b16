package org.taperwright.library.exchange.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.exchange.Bytes;
import org.taperwright.library.exchange.FieldChange;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.exchange.LibraryBundle.Item;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Room;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;

class ImportPlanTest {
    private static final Design LONGER =
            Designs.with(Examples.design()).lengthMm(31).design();

    private static ImportPlan plan(Snapshot library, Item... items) {
        String text = JsonForms.write(new LibraryBundle(List.of(items)));
        Offer offer = Offer.ofForms(Bytes.source("f.json", text.getBytes(StandardCharsets.UTF_8)));
        return ((ImportPlan.Planned) ImportPlan.of(offer, library, Progress.NONE)).plan();
    }

    private static Snapshot library() {
        Map<ThingId, Record> things = new LinkedHashMap<>();
        Examples.bundle().items().forEach(item -> things.put(item.id(), item.thing()));
        return Examples.snapshotOf(things);
    }

    private static final Item COMPARISON = new Item(Examples.COMPARISON_ID, Examples.comparison());

    @Test
    void everythingIsNewToAnEmptyLibrary() {
        ImportPlan plan =
                plan(Examples.snapshotOf(Map.of()), Examples.bundle().items().toArray(new Item[0]));
        assertThat(plan.count(Standing.New.class))
                .isEqualTo(Examples.bundle().items().size());
        assertThat(plan.open()).isEmpty();
        assertThat(plan.changes(Progress.NONE))
                .isEqualTo(Examples.bundle().items().stream()
                        .map(item -> new Change.Put(item.id(), item.thing()))
                        .toList());
    }

    @Test
    void whatTheLibraryHasJustSoChangesNothing() {
        ImportPlan plan = plan(library(), Examples.bundle().items().toArray(new Item[0]));
        assertThat(plan.count(Standing.Same.class))
                .isEqualTo(Examples.bundle().items().size());
        assertThat(plan.changes(Progress.NONE)).isEmpty();
    }

    @Test
    void whatDiffersIsToldFieldByFieldAndStaysUntilAPersonChooses() {
        ImportPlan plan = plan(library(), new Item(Examples.DESIGN_ID, LONGER));
        assertThat(plan.open())
                .singleElement()
                .satisfies(thing -> assertThat(thing.standing())
                        .isEqualTo(new Standing.Changed(
                                List.of(new FieldChange("lengthMm", Optional.of("25"), Optional.of("31"))))));
        assertThat(plan.changes(Progress.NONE)).isEmpty();
        assertThat(plan.with(Examples.DESIGN_ID, Resolution.OURS).changes(Progress.NONE))
                .isEmpty();
        assertThat(plan.with(Examples.DESIGN_ID, Resolution.THEIRS).changes(Progress.NONE))
                .containsExactly(new Change.Put(Examples.DESIGN_ID, LONGER));
    }

    @Test
    void keptBothItComesInUnderANewIdentifierThatWhatComesWithItRefersTo() {
        SavedComparison theirs = new SavedComparison("Theirs", List.of(Examples.DESIGN_ID), Examples.DESIGN_ID, "");
        Item comparison = new Item(new ThingId("their-comparison"), theirs);
        ImportPlan plan = plan(library(), comparison, new Item(Examples.DESIGN_ID, LONGER))
                .withAll(Resolution.BOTH);
        List<Change> changes = plan.changes(Progress.NONE);
        ThingId fresh = plan.things().get(Examples.DESIGN_ID).fresh().orElseThrow();
        assertThat(fresh).isNotEqualTo(Examples.DESIGN_ID);
        assertThat(changes)
                .containsExactly(
                        new Change.Put(comparison.id(), new SavedComparison("Theirs", List.of(fresh), fresh, "")),
                        new Change.Put(fresh, LONGER));
    }

    /** Both as a design of the library and as an instrument's copy of one. */
    @Test
    void anAlloyGoesWithTheDesignsThatNameItAndIsFollowedUnderANewIdentifier() {
        Design own = Designs.with(LONGER).alloy(Examples.ALLOY_ID.value()).design();
        ThingId design = new ThingId("of-own-alloy");
        Snapshot library = Examples.snapshotOf(Map.of(design, own, Examples.ALLOY_ID, Examples.alloy()));
        assertThat(Selection.of(library, List.of(design)).bundle().items())
                .containsExactly(new Item(design, own), new Item(Examples.ALLOY_ID, Examples.alloy()));

        ImportPlan plan = plan(
                        library(),
                        new Item(design, own),
                        new Item(Examples.ALLOY_ID, Examples.alloy().named("Another lot")))
                .withAll(Resolution.BOTH);
        List<Change> changes = plan.changes(Progress.NONE);
        ThingId fresh = plan.things().get(Examples.ALLOY_ID).fresh().orElseThrow();
        assertThat(changes)
                .containsExactly(
                        new Change.Put(
                                design, Designs.with(own).alloy(fresh.value()).design()),
                        new Change.Put(fresh, Examples.alloy().named("Another lot")));
    }

    @Test
    void anotherKindsPlaceIsNeverTaken() {
        ImportPlan plan = plan(library(), new Item(Examples.MOTOR_ID, LONGER));
        assertThat(plan.open()).hasSize(1);
        assertThatThrownBy(() -> plan.with(Examples.MOTOR_ID, Resolution.THEIRS))
                .isInstanceOf(IllegalArgumentException.class);
        List<Change> changes = plan.withAll(Resolution.THEIRS).changes(Progress.NONE);
        assertThat(changes)
                .singleElement()
                .satisfies(change -> assertThat(change.id()).isNotEqualTo(Examples.MOTOR_ID));
    }

    @Test
    void aFileWithAFaultIsRefusedAsAWhole() {
        byte[] text =
                JsonForms.write(Examples.bundle()).replace("clockwise", "round").getBytes(StandardCharsets.UTF_8);
        ImportPlan.Result result = ImportPlan.of(
                Offer.ofForms(Bytes.source("f.json", text)), Examples.snapshotOf(Map.of()), Progress.NONE);
        assertThat(((ImportPlan.Refused) result).faults()).isNotEmpty();
    }

    @Test
    void moreThingsThanThereIsRoomForAreRefusedBeforeTheRestIsRead() {
        byte[] text =
                JsonForms.write(Examples.bundle()).replace("clockwise", "round").getBytes(StandardCharsets.UTF_8);
        Snapshot held = Examples.snapshotOf(Map.of(COMPARISON.id(), COMPARISON.thing()));
        Room forThree = new Room(3 * (5 << 10));
        Item[] three = {
            new Item(new ThingId("a"), LONGER), new Item(new ThingId("b"), LONGER), new Item(new ThingId("c"), LONGER)
        };
        assertThat(refusal(
                        JsonForms.write(new LibraryBundle(List.of(three))).getBytes(StandardCharsets.UTF_8),
                        held,
                        forThree))
                .isEqualTo("f.json:1:1: file: holds more than the 2 things for which the library has room beside its 1;"
                        + " expected at most 3 together in 0 MB of memory: split the file, or keep a part in another"
                        + " library");
        assertThat(refusal(text, held, new Room(1 << 10)))
                .isEqualTo(
                        "f.json:1:1: file: is of 0 MB; expected at most 0 MB, for which the memory has room: split it");
    }

    @Test
    void whatTheLibraryHasAlreadyTakesNoRoomTwice() {
        byte[] text = JsonForms.write(Examples.bundle()).getBytes(StandardCharsets.UTF_8);
        Room justForThese = new Room(Examples.bundle().items().size() * (5L << 10));
        Offer same = new Offer() {
            @Override
            public String name() {
                return "f.json";
            }

            @Override
            public long size() {
                return 0;
            }

            @Override
            public Given each(Consumer<Item> taker, Progress progress) {
                return Offer.ofForms(Bytes.source("f.json", text)).each(taker, progress);
            }
        };
        assertThat(ImportPlan.of(same, library(), justForThese, Progress.NONE)).isInstanceOf(ImportPlan.Planned.class);
    }

    private static String refusal(byte[] text, Snapshot library, Room room) {
        ImportPlan.Result result =
                ImportPlan.of(Offer.ofForms(Bytes.source("f.json", text)), library, room, Progress.NONE);
        return ((ImportPlan.Refused) result).faults().get(0).sentence();
    }

    @Test
    void aSelectionTakesWithItWhatItRefersTo() {
        Selection selection = Selection.of(library(), List.of(Examples.SEQUENCE_ID));
        assertThat(selection.bundle().items())
                .extracting(Item::id)
                .containsExactly(
                        Examples.DESIGN_ID,
                        Examples.INSTRUMENT_ID,
                        Examples.MOTOR_ID,
                        Examples.CANAL_ID,
                        Examples.SEQUENCE_ID);
        assertThat(selection.absent()).isEmpty();
        assertThat(Selection.of(
                                Examples.snapshotOf(Map.of(COMPARISON.id(), COMPARISON.thing())),
                                List.of(COMPARISON.id()))
                        .absent())
                .containsExactly(Examples.DESIGN_ID);
    }
}
