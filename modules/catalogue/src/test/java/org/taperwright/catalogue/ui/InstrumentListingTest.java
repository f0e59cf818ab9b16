package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import javax.swing.RowSorter.SortKey;
import javax.swing.SortOrder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Window;

class InstrumentListingTest {
    private static final int[] SIZES = {6, 8, 10, 15, 20, 25, 40, 100};

    private final Map<ThingId, Entry> entries = new HashMap<>();
    private Snapshot library;
    private InstrumentList all;

    @BeforeEach
    void fill() {
        Random random = new Random(3);
        for (int i = 0; i < 3000; i++) {
            put("i" + i, SampleLibrary.hand(SIZES[random.nextInt(SIZES.length)]), 1);
        }
        put("rotary", (Record) SampleLibrary.things().get(SampleLibrary.ROTARY), 1);
        put(
                "slow",
                new Motor("Slow", "", new Window(50, 100), new Window(1, 50), Optional.empty(), true, false, ""),
                1);
        put(
                "quick",
                new Motor("Quick", "", new Window(50, 900), new Window(1, 50), Optional.empty(), true, false, ""),
                1);
        library = new Snapshot(1, entries);
        all = list(InstrumentList.NOTHING, library, InstrumentList.USUAL_ORDER, InstrumentFilter.ALL);
    }

    private void put(String id, Record thing, long revision) {
        entries.put(new ThingId(id), new Entry(new ThingId(id), thing, revision, Instant.EPOCH, ""));
    }

    @Test
    void rows_stand_by_size_first_smallest_on_top() {
        assertThat(shown(all))
                .isSortedAccordingTo((a, b) ->
                        Integer.compare(a.designation().size(), b.designation().size()))
                .hasSize(3001);
    }

    @Test
    void another_order_is_by_the_column_asked_for_and_turned_round() {
        List<SortKey> keys = List.of(new SortKey(InstrumentColumn.NAME.ordinal(), SortOrder.DESCENDING));
        List<InstrumentRow> shown = shown(list(all, library, keys, InstrumentFilter.ALL));

        assertThat(shown.get(0).instrument().name()).isEqualTo("K-type file 100");
        assertThat(shown.get(3000).instrument().name()).isEqualTo("Fen rotary 25");
    }

    @Test
    void a_filter_lets_through_exactly_the_rows_in_which_every_word_occurs_in_the_same_order() {
        InstrumentList narrowed = filtered(InstrumentFilter.ALL.withWords("  STAINLESS white "));

        assertThat(shown(narrowed))
                .isEqualTo(shown(all).stream()
                        .filter(row -> row.designation().size() == 15)
                        .toList())
                .isNotEmpty();
    }

    @Test
    void conditions_must_all_hold() {
        InstrumentFilter middle = InstrumentFilter.ALL
                .withSize(Optional.of(new Window(20, 30)))
                .withTaper(Optional.of(new Window(0.02, 0.02)));

        assertThat(shown(filtered(middle)))
                .isNotEmpty()
                .allMatch(row -> List.of(20, 25).contains(row.designation().size()));
        assertThat(shown(filtered(middle.withInStock(true)))).isEmpty();
    }

    @Test
    void a_motor_lets_through_only_what_it_can_drive() {
        // the rotary file's maker states 250 to 400 rpm
        assertThat(shown(filtered(InstrumentFilter.ALL.withMotor(Optional.of(new ThingId("quick"))))))
                .extracting(row -> row.instrument().name())
                .containsExactly("Fen rotary 25");
        assertThat(shown(filtered(InstrumentFilter.ALL.withMotor(Optional.of(new ThingId("slow"))))))
                .isEmpty();
    }

    @Test
    void places_and_rows_find_each_other() {
        InstrumentList narrowed = filtered(InstrumentFilter.ALL.withWords("25"));

        for (int place = 0; place < narrowed.shown().length; place++) {
            assertThat(narrowed.places()[narrowed.shown()[place]]).isEqualTo(place);
        }
        assertThat(Arrays.stream(narrowed.places()).filter(place -> place >= 0).count())
                .isEqualTo(narrowed.shown().length);
    }

    @Test
    void after_an_edit_only_the_changed_row_is_new_and_stands_where_it_belongs() {
        put("i7", SampleLibrary.hand(140), 2);
        entries.remove(new ThingId("i8"));
        Snapshot edited = new Snapshot(2, entries);
        InstrumentList after = list(all, edited, InstrumentList.USUAL_ORDER, InstrumentFilter.ALL);

        assertThat(shown(after)).hasSize(3000);
        assertThat(shown(after).get(2999).id()).isEqualTo(new ThingId("i7"));
        List<InstrumentRow> before = shown(all);
        assertThat(shown(after).stream().filter(row -> !before.contains(row)))
                .extracting(InstrumentRow::id)
                .containsExactly(new ThingId("i7"));
    }

    private InstrumentList filtered(InstrumentFilter filter) {
        return list(all, library, InstrumentList.USUAL_ORDER, filter);
    }

    private static InstrumentList list(
            InstrumentList before, Snapshot library, List<SortKey> keys, InstrumentFilter filter) {
        return new InstrumentListing(before, library, keys, filter).run(Progress.NONE);
    }

    private static List<InstrumentRow> shown(InstrumentList list) {
        return IntStream.range(0, list.shown().length).mapToObj(list::at).toList();
    }
}
