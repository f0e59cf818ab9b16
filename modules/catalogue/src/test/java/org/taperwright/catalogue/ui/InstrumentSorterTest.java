package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import javax.swing.RowSorter;
import javax.swing.SortOrder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.Entry;
import org.taperwright.mechanics.design.ThingId;

class InstrumentSorterTest {
    private static final int[] SIZES = {6, 8, 10, 15, 20, 25, 40, 100};

    private final InstrumentTableModel model = new InstrumentTableModel();
    private final InstrumentSorter sorter = new InstrumentSorter(model);
    private final List<InstrumentRow> rows = new ArrayList<>();

    @BeforeEach
    void fill() {
        Random random = new Random(3);
        for (int i = 0; i < 3000; i++) {
            rows.add(InstrumentRow.of(new Entry(
                    new ThingId("i" + i),
                    SampleLibrary.hand(SIZES[random.nextInt(SIZES.length)]),
                    1,
                    Instant.EPOCH,
                    "")));
        }
        model.show(rows);
        sorter.allRowsChanged();
    }

    @Test
    void rows_stand_by_size_first_smallest_on_top() {
        assertThat(shown())
                .isSortedAccordingTo((a, b) ->
                        Integer.compare(a.designation().size(), b.designation().size()))
                .hasSize(3000);
    }

    @Test
    void a_second_press_on_a_heading_turns_the_order_round() {
        sorter.toggleSortOrder(InstrumentColumn.NAME.ordinal());
        sorter.toggleSortOrder(InstrumentColumn.NAME.ordinal());

        assertThat(sorter.getSortKeys().get(0))
                .isEqualTo(new RowSorter.SortKey(InstrumentColumn.NAME.ordinal(), SortOrder.DESCENDING));
        assertThat(shown().get(0).instrument().name()).isEqualTo("K-type file 100");
        assertThat(shown().get(2999).instrument().name()).isEqualTo("K-type file 6");
    }

    @Test
    void a_filter_lets_through_exactly_the_rows_in_which_every_word_occurs_in_the_same_order() {
        List<InstrumentRow> before = shown();
        sorter.filter(SearchWords.of("  STAINLESS white "));

        assertThat(shown())
                .isEqualTo(before.stream()
                        .filter(row -> row.designation().size() == 15)
                        .toList())
                .isNotEmpty();
    }

    @Test
    void places_and_rows_find_each_other() {
        sorter.filter(SearchWords.of("25"));

        for (int place = 0; place < sorter.getViewRowCount(); place++) {
            assertThat(sorter.convertRowIndexToView(sorter.convertRowIndexToModel(place)))
                    .isEqualTo(place);
        }
        assertThat(IntStream.range(0, 3000)
                        .filter(row -> sorter.convertRowIndexToView(row) >= 0)
                        .count())
                .isEqualTo(sorter.getViewRowCount());
    }

    private List<InstrumentRow> shown() {
        return IntStream.range(0, sorter.getViewRowCount())
                .mapToObj(place -> rows.get(sorter.convertRowIndexToModel(place)))
                .toList();
    }
}
