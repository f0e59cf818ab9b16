package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.datatransfer.Transferable;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Supply;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.api.ThingTransfer;
import org.taperwright.workbench.ui.MemorySettings;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Shots;

/** The panel on a desk in memory, without a display. */
class InstrumentsPanelTest {
    private final MemorySettings settings = new MemorySettings();
    private BareDesk desk;
    private InstrumentsPanel panel;

    @BeforeEach
    void open() throws InterruptedException {
        Shots.theme(false);
        desk = Shots.onEventThread(() -> new BareDesk(SampleLibrary.things()));
        panel = Shots.onEventThread(() -> {
            InstrumentsPanel made = new InstrumentsPanel(desk, settings);
            made.attach();
            return made;
        });
        desk.settle();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void typing_narrows_the_table_and_says_how_many_are_left() throws InterruptedException {
        type("instruments.filter", "triangle rotation");

        assertThat(names()).containsExactly("Fen rotary 25");
        assertThat(((JLabel) Panels.find(panel, "instruments.count")).getText()).isEqualTo("1 of 3 instruments");
    }

    @Test
    void a_colours_word_finds_its_sizes() throws InterruptedException {
        type("instruments.filter", "red");

        assertThat(names()).containsExactly("K-type file 25", "Fen rotary 25");
    }

    @Test
    void selecting_a_row_selects_the_instrument_everywhere() throws InterruptedException {
        Panels.perform(desk, () -> table().setRowSelectionInterval(0, 0));

        assertThat(desk.selected(ThingKind.INSTRUMENT)).contains(SampleLibrary.HAND_8);
    }

    @Test
    void an_instrument_selected_elsewhere_is_selected_here_and_a_design_is_not_minded() throws InterruptedException {
        Panels.perform(desk, () -> desk.select(SampleLibrary.ROTARY));
        Panels.perform(desk, () -> desk.select(SampleLibrary.DESIGN));

        assertThat(table().getSelectedRow()).isEqualTo(2);
    }

    @Test
    void size_and_taper_fill_the_rest_of_a_new_instrument() throws InterruptedException {
        type("entry.sizes", "30");
        press("entry.add");

        assertThat(desk.nextUndo()).contains("Add K-type file 30/.02");
        Instrument added = desk.snapshot()
                .thing(desk.selected(ThingKind.INSTRUMENT).orElseThrow(), Instrument.class)
                .orElseThrow();
        Design design = added.design();
        // ISO 3630-1: d16 = d0 + 0.32 at the standard's taper of 0.02
        assertThat(design.diameterMm(0)).isCloseTo(0.30, within(1e-12));
        assertThat(design.diameterMm(16)).isCloseTo(0.62, within(1e-12));
        assertThat(added.designAssumed()).isTrue();
        assertThat(design.sections().get(0).shape().family()).isEqualTo("square");

        Panels.perform(desk, desk::undo);

        assertThat(desk.snapshot().ofKind(ThingKind.INSTRUMENT)).hasSize(3);
        assertThat(table().getRowCount()).isEqualTo(3);
    }

    @Test
    void a_range_of_sizes_is_one_edit() throws InterruptedException {
        type("entry.sizes", "15–40");
        press("entry.add");

        assertThat(desk.nextUndo()).contains("Add 6 instruments, K-type file 15 to 40");
        assertThat(desk.snapshot().ofKind(ThingKind.INSTRUMENT)).hasSize(9);
    }

    @Test
    void what_is_not_understood_is_said_and_nothing_can_be_added() throws InterruptedException {
        type("entry.sizes", "medium");

        assertThat(((JLabel) Panels.find(panel, "entry.outcome")).getText()).contains("“medium” is not understood");
        assertThat(Panels.find(panel, "entry.add").isEnabled()).isFalse();
    }

    @Test
    void an_alike_instrument_is_mentioned_before_adding() throws InterruptedException {
        type("entry.sizes", "25");

        assertThat(((JLabel) Panels.find(panel, "entry.outcome")).getText()).contains("1 alike in the library already");
    }

    @Test
    void selected_rows_are_dragged_as_things_in_the_order_shown() throws InterruptedException {
        Panels.perform(desk, () -> table().setRowSelectionInterval(0, 1));
        Transferable[] dragged = new Transferable[1];
        Panels.perform(desk, () -> dragged[0] = ((ThingDrag) table().getTransferHandler()).createTransferable(table()));

        assertThat(ThingTransfer.from(dragged[0]).orElseThrow().ids())
                .isEqualTo(List.of(SampleLibrary.HAND_8, SampleLibrary.HAND_25));
    }

    @Test
    void sizes_tapers_and_lengths_are_counted_before_they_are_added_and_added_in_one_edit()
            throws InterruptedException {
        type("entry.sizes", "15–25");
        type("entry.tapers", ".02, .04");
        type("entry.lengths", "21 25");

        assertThat(((JLabel) Panels.find(panel, "entry.outcome")).getText())
                .startsWith("12 instruments: 3 sizes × 2 tapers × 2 lengths");
        press("entry.add");

        assertThat(desk.snapshot().ofKind(ThingKind.INSTRUMENT)).hasSize(15);
        Panels.perform(desk, desk::undo);
        assertThat(desk.snapshot().ofKind(ThingKind.INSTRUMENT)).hasSize(3);
    }

    @Test
    void a_filter_is_kept_in_the_library_by_name_and_shown_again() throws InterruptedException {
        type("filter.sizes", "20–30");
        SavedFilterButton saved = (SavedFilterButton) Panels.find(panel, "filter.saved");
        Panels.perform(desk, () -> saved.keep("Middle sizes"));
        type("filter.sizes", "");

        assertThat(desk.nextUndo()).contains("Save filter Middle sizes");
        assertThat(names()).hasSize(3);

        Panels.perform(desk, () -> ((AbstractButton) saved.menu().getComponent(0)).doClick());
        assertThat(names()).containsExactly("K-type file 25", "Fen rotary 25");
        assertThat(Panels.find(panel, "filter.more")).hasFieldOrPropertyWithValue("text", "Filters (1)");
    }

    @Test
    void columns_are_chosen_and_remembered() throws InterruptedException {
        JTable first = table();
        Panels.perform(desk, () -> ChosenColumns.on(first, settings).show(InstrumentColumn.LOT, true));
        InstrumentsPanel another = Shots.onEventThread(() -> new InstrumentsPanel(desk, settings));
        JTable second = (JTable) Panels.find(another, "instruments.table");

        assertThat(headings(second)).contains("Lot").doesNotContain("Price");
        assertThat(headings(second)).isEqualTo(headings(first));
    }

    private static List<Object> headings(JTable table) {
        return java.util.stream.IntStream.range(0, table.getColumnCount())
                .mapToObj(column -> table.getColumnModel().getColumn(column).getHeaderValue())
                .toList();
    }

    @Test
    void a_field_beside_the_table_is_an_edit_by_name() throws InterruptedException {
        Panels.perform(desk, () -> desk.select(SampleLibrary.HAND_25));
        enter("instrument.lot", "L-77");
        enter("instrument.stock.text", "4");
        enter("instrument.expiry.text", "2030-05-31");

        assertThat(desk.nextUndo()).contains("Expiry of K-type file 25 to 2030-05-31");
        Supply supply = supply(SampleLibrary.HAND_25);
        assertThat(supply.lot()).isEqualTo("L-77");
        assertThat(supply.stock()).isEqualTo(4);

        Panels.perform(desk, desk::undo);
        assertThat(supply(SampleLibrary.HAND_25).expiry()).isEmpty();
        assertThat(((JTextField) Panels.find(panel, "instrument.expiry.text")).getText())
                .isEmpty();
    }

    @Test
    void what_a_field_does_not_understand_is_said_beneath_it_and_changes_nothing() throws InterruptedException {
        Panels.perform(desk, () -> desk.select(SampleLibrary.ROTARY));
        enter("instrument.speed.text", "fast");

        assertThat(((Prose) Panels.find(panel, "instrument.speed.fault")).getText())
                .contains("“fast” is not understood");
        assertThat(desk.nextUndo()).isEmpty();

        enter("instrument.speed.text", "300–350 rpm");
        assertThat(desk.nextUndo()).contains("Speed of Fen rotary 25 to 300–350 rpm");
    }

    @Test
    void several_rows_are_changed_in_one_edit_and_a_row_that_cannot_be_is_told() throws InterruptedException {
        Panels.perform(desk, () -> table().selectAll());
        type("many.lot", "B-2");
        type("many.length", "12");
        press("many.change");

        // a working part of 16 mm does not fit a length of 12 mm
        assertThat(((Prose) Panels.find(panel, "many.outcome")).getText())
                .startsWith("0 changed, 3 left as they were:")
                .contains("K-type file 8");
        assertThat(desk.nextUndo()).isEmpty();

        type("many.length", "");
        press("many.change");

        assertThat(desk.nextUndo()).contains("Lot of 3 instruments");
        assertThat(supply(SampleLibrary.ROTARY).lot()).isEqualTo("B-2");
    }

    private Supply supply(ThingId id) {
        return desk.snapshot().thing(id, Instrument.class).orElseThrow().supply();
    }

    private void enter(String field, String text) throws InterruptedException {
        Panels.perform(desk, () -> {
            JTextField found = (JTextField) Panels.find(panel, field);
            found.setText(text);
            found.postActionEvent();
        });
    }

    @Test
    void removing_from_the_table_is_one_named_edit() throws InterruptedException {
        Panels.perform(desk, () -> table().setRowSelectionInterval(0, 1));
        Panels.perform(
                desk,
                () -> table().getActionMap()
                        .get("thing.Remove from the library")
                        .actionPerformed(new java.awt.event.ActionEvent(table(), 0, "")));

        assertThat(desk.nextUndo()).contains("Remove 2 instruments");
        assertThat(desk.snapshot().ofKind(ThingKind.INSTRUMENT).stream().map(Entry::name))
                .containsExactly("Fen rotary 25");
    }

    private JTable table() {
        return (JTable) Panels.find(panel, "instruments.table");
    }

    private List<String> names() {
        return java.util.stream.IntStream.range(0, table().getRowCount())
                .mapToObj(
                        row -> ((InstrumentTable) table()).row(row).instrument().name())
                .toList();
    }

    private void type(String field, String text) throws InterruptedException {
        Panels.perform(desk, () -> ((JTextField) Panels.find(panel, field)).setText(text));
    }

    private void press(String button) throws InterruptedException {
        Panels.perform(desk, () -> ((AbstractButton) Panels.find(panel, button)).doClick());
    }
}
