package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.Transferable;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.api.ThingTransfer;
import org.taperwright.workbench.ui.Shots;

/** The panel on a desk in memory, without a display. */
class LibraryPanelTest {
    private BareDesk desk;
    private LibraryPanel panel;

    @BeforeEach
    void open() throws InterruptedException {
        open(SampleLibrary.things());
    }

    private void open(Map<ThingId, Record> things) throws InterruptedException {
        Shots.theme(false);
        desk = Shots.onEventThread(() -> new BareDesk(things));
        panel = Shots.onEventThread(() -> {
            LibraryPanel made = new LibraryPanel(desk);
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
    void every_kind_has_a_heading_with_its_things_by_name_and_number() {
        assertThat(rows())
                .containsExactly(
                        "Designs",
                        "Fen square 25/.02",
                        "Instruments",
                        "Fen rotary 25",
                        "K-type file 8",
                        "K-type file 25",
                        "Motors",
                        "Canals",
                        "Sequences",
                        "Kits",
                        "Comparisons",
                        "One against itself",
                        "Filters",
                        "Alloys");
    }

    @Test
    void a_search_leaves_only_what_bears_all_its_words() throws InterruptedException {
        type("FEN 25");

        assertThat(rows()).containsExactly("Designs", "Fen square 25/.02", "Instruments", "Fen rotary 25");

        type("");

        assertThat(rows()).hasSize(14);
    }

    @Test
    void selecting_selects_everywhere_and_selection_elsewhere_is_followed() throws InterruptedException {
        Panels.perform(desk, () -> tree().setSelectionRow(1));
        assertThat(desk.selected()).contains(SampleLibrary.DESIGN);

        Panels.perform(desk, () -> desk.select(SampleLibrary.HAND_25));
        assertThat(tree().selectedThings()).containsExactly(SampleLibrary.HAND_25);
    }

    @Test
    void selection_elsewhere_opens_no_heading_that_is_closed() throws InterruptedException {
        Panels.perform(desk, () -> tree().collapseRow(2));
        Panels.perform(desk, () -> desk.select(SampleLibrary.HAND_25));

        assertThat(tree().isCollapsed(2)).isTrue();
        assertThat(tree().selectedThings()).isEmpty();
    }

    @Test
    void renaming_in_place_is_a_named_edit_that_undo_takes_back_and_the_selection_stays() throws InterruptedException {
        Panels.perform(desk, () -> tree().setSelectionRow(1));
        Panels.perform(desk, () -> tree().getModel().valueForPathChanged(tree().getSelectionPath(), " Ditch square "));

        assertThat(desk.nextUndo()).contains("Rename Fen square 25/.02 to Ditch square");
        assertThat(rows()).contains("Ditch square");
        assertThat(tree().selectedThings()).containsExactly(SampleLibrary.DESIGN);

        Panels.perform(desk, desk::undo);

        assertThat(rows()).contains("Fen square 25/.02").doesNotContain("Ditch square");
    }

    @Test
    void only_things_are_renamed_and_only_when_asked_to() {
        assertThat(tree().isPathEditable(tree().getPathForRow(0))).isFalse();
        assertThat(tree().isPathEditable(tree().getPathForRow(1))).isTrue();
        assertThat(tree().getCellEditor().isCellEditable(new java.util.EventObject(this)))
                .isFalse();
        assertThat(tree().getInputMap().get(KeyStroke.getKeyStroke("F2"))).isEqualTo("thing.Rename…");
    }

    @Test
    void duplicating_gives_a_free_name_and_selects_the_copy() throws InterruptedException {
        Panels.perform(desk, () -> tree().setSelectionRow(1));
        act("Duplicate");
        Panels.perform(desk, () -> desk.select(SampleLibrary.DESIGN));
        act("Duplicate");

        assertThat(desk.nextUndo()).contains("Duplicate Fen square 25/.02");
        assertThat(desk.snapshot().ofKind(ThingKind.DESIGN).stream().map(Entry::name))
                .containsExactly("Fen square 25/.02", "Fen square 25/.02, copy", "Fen square 25/.02, copy 2");
        assertThat(desk.selected(ThingKind.DESIGN))
                .isPresent()
                .isNotEqualTo(java.util.Optional.of(SampleLibrary.DESIGN));
    }

    @Test
    void removing_several_is_one_edit_and_undo_brings_them_back() throws InterruptedException {
        Panels.perform(desk, () -> tree().setSelectionInterval(3, 4));
        act("Remove from the library");

        assertThat(desk.nextUndo()).contains("Remove 2 instruments");
        assertThat(rows()).doesNotContain("Fen rotary 25", "K-type file 8");

        Panels.perform(desk, desk::undo);

        assertThat(rows()).contains("Fen rotary 25", "K-type file 8");
    }

    @Test
    void things_are_dragged_and_headings_are_not() throws InterruptedException {
        Panels.perform(desk, () -> tree().setSelectionInterval(2, 3));
        Transferable[] dragged = new Transferable[1];
        Panels.perform(desk, () -> dragged[0] = ((ThingDrag) tree().getTransferHandler()).createTransferable(tree()));

        assertThat(ThingTransfer.from(dragged[0]).orElseThrow().ids()).containsExactly(SampleLibrary.ROTARY);
    }

    @Test
    void an_empty_library_says_what_to_do_next() throws InterruptedException {
        close();
        open(Map.of());

        assertThat(Panels.find(panel, "library.empty").isVisible()).isTrue();
    }

    @Test
    void a_search_that_finds_nothing_says_so() throws InterruptedException {
        type("no such thing");

        assertThat(Panels.find(panel, "library.notFound").isVisible()).isTrue();
    }

    private LibraryTree tree() {
        return (LibraryTree) Panels.find(panel, "library.tree");
    }

    private List<String> rows() {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < tree().getRowCount(); row++) {
            rows.add(tree().convertValueToText(
                            tree().getPathForRow(row).getLastPathComponent(), false, false, false, row, false));
        }
        return rows;
    }

    private void type(String text) throws InterruptedException {
        Panels.perform(desk, () -> ((JTextField) Panels.find(panel, "library.search")).setText(text));
    }

    private void act(String words) throws InterruptedException {
        Panels.perform(
                desk,
                () -> tree().getActionMap().get("thing." + words).actionPerformed(new ActionEvent(tree(), 0, "")));
    }
}
