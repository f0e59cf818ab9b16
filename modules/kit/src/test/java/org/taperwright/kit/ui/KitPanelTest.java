package org.taperwright.kit.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.LifeSpent;
import org.taperwright.shaping.kit.Piece;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.api.ThingTransfer;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Shots;

/** The panel on a desk in memory, without a display. */
class KitPanelTest {
    private BareDesk desk;
    private KitPanel panel;

    @BeforeEach
    void open() throws InterruptedException {
        open(SampleKit.things());
    }

    private void open(Map<ThingId, Record> things) throws InterruptedException {
        Shots.theme(false);
        desk = Shots.onEventThread(() -> new BareDesk(things));
        panel = Shots.onEventThread(() -> {
            KitPanel made = new KitPanel(desk);
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
    void a_use_is_logged_with_one_press_or_one_key_and_undo_takes_it_back() throws InterruptedException {
        select("k15-1");
        press("kit.log-a-use");

        assertThat(desk.nextUndo()).contains("Log a use of k15-1");
        assertThat(piece("k15-1").uses()).isEqualTo(2);
        assertThat(table().getInputMap().get(KeyStroke.getKeyStroke("U"))).isEqualTo("Log a use");
        assertThat(((PiecesTable) table()).selectedPieces())
                .as("the selection stays, so that the next gesture finds it")
                .containsExactly("k15-1");

        perform(desk::undo);
        assertThat(piece("k15-1").uses()).isEqualTo(1);
    }

    @Test
    void a_use_by_a_sequence_with_a_canal_carries_the_share_of_life_that_it_took() throws InterruptedException {
        tryTheSequenceInACanal();
        perform(() -> ((JComboBox<?>) find(panel, "kit.sequence")).setSelectedIndex(1));
        select("fen25-2");
        press("kit.log-a-use");

        LifeSpent spent = piece("fen25-2").log().get(0).lifeSpent().orElseThrow();
        assertThat(spent.central()).isPositive();
        assertThat(spent.low()).isLessThan(spent.central());
        assertThat(spent.high()).isGreaterThan(spent.central());
        assertThat(piece("fen25-2").log().get(0).sequence()).contains(SampleKit.SEQUENCE);
    }

    @Test
    void a_use_whose_share_of_life_is_still_worked_out_is_logged_in_the_kit_on_which_it_was_asked()
            throws InterruptedException {
        tryTheSequenceInACanal();
        ThingId other = new ThingId("other-kit");
        perform(() -> desk.edit(
                "Another kit with a piece of the same name",
                List.of(new Change.Put(
                        other, new Kit("Chair 3", kit().purpose(), kit().motor(), kit().pieces(), "")))));
        perform(() -> ((JComboBox<?>) find(panel, "kit.sequence")).setSelectedIndex(1));
        select("fen25-2");
        perform(() -> {
            ((AbstractButton) find(panel, "kit.log-a-use")).doClick();
            desk.select(other);
        });

        assertThat(piece("fen25-2").uses()).isEqualTo(1);
        assertThat(desk.snapshot()
                        .thing(other, Kit.class)
                        .orElseThrow()
                        .piece("fen25-2")
                        .orElseThrow()
                        .uses())
                .isZero();
    }

    @Test
    void the_kit_selected_last_is_shown_when_the_reading_of_another_comes_late() throws InterruptedException {
        ThingId other = new ThingId("other-kit");
        perform(() -> desk.edit(
                "Another kit",
                List.of(new Change.Put(other, new Kit("Chair 3", "Premolars", Optional.empty(), List.of(), "")))));
        perform(() -> {
            desk.select(other);
            desk.select(SampleKit.KIT);
            desk.select(other);
        });

        assertThat(column("kit.pieces", 1)).isEmpty();
        assertThat(((javax.swing.text.JTextComponent) find(panel, "kit.card")).getText())
                .contains("Chair 3")
                .doesNotContain("Chair 2");
    }

    private void tryTheSequenceInACanal() throws InterruptedException {
        Canal canal = new Canal(
                "Bent tube",
                List.of(new CanalPiece(6, 0, 0), new CanalPiece(6, 43, 0)),
                List.of(new Opening(0, 0.9, 0.9, 0), new Opening(12, 0.2, 0.2, 0)),
                List.of(),
                6,
                17,
                "invented",
                "");
        Sequence sequence =
                desk.snapshot().thing(SampleKit.SEQUENCE, Sequence.class).orElseThrow();
        List<Step> steps = List.of(new InstrumentStep(
                SampleKit.ROTARY, 17, Motion.ROTATION, Optional.of(300.0), Optional.of(20.0), 3, ""));
        perform(() -> desk.edit(
                "Try it in a canal",
                List.of(
                        new Change.Put(new ThingId("canal"), canal),
                        new Change.Put(
                                SampleKit.SEQUENCE,
                                new Sequence(
                                        sequence.name(),
                                        Optional.of(new ThingId("canal")),
                                        sequence.motor(),
                                        steps,
                                        "")))));
    }

    @Test
    void a_sterilisation_of_several_pieces_is_one_edit() throws InterruptedException {
        perform(() -> table().selectAll());
        press("kit.sterilised");

        assertThat(desk.nextUndo()).contains("Log a sterilisation of 3 pieces");
        assertThat(piece("fen25-2").sterilisations()).isEqualTo(1);
    }

    @Test
    void the_last_use_allowed_puts_a_piece_on_the_discard_list_and_discarding_it_says_why()
            throws InterruptedException {
        // three uses are allowed and three are logged; the other file is bent
        assertThat(column("kit.discards", 0)).contains("fen25-1", "fen25-2").doesNotContain("k15-1");

        press("kit.discards.discard-all-that-are-due");

        assertThat(desk.nextUndo()).contains("Discard 2 pieces");
        assertThat(piece("fen25-1").discarded().orElseThrow().reason()).contains("its maker allows 3");
        assertThat(column("kit.discards", 0)).isEmpty();
        assertThat(column("kit.orders", 3)).anyMatch(why -> why.contains("replaces 2 discarded pieces"));
    }

    @Test
    void an_estimate_stands_with_its_band() {
        assertThat(column("kit.pieces", 8)).contains("45 % (20 to 110 %)", "not estimated");
    }

    @Test
    void a_use_of_a_discarded_piece_is_refused_and_said() throws InterruptedException {
        press("kit.discards.discard-all-that-are-due");
        select("fen25-1");
        press("kit.log-a-use");

        assertThat(piece("fen25-1").uses()).isEqualTo(3);
        assertThat(((Prose) find(panel, "kit.told")).getText()).contains("fen25-1 was discarded");
    }

    @Test
    void instruments_dropped_become_pieces_with_the_lot_of_the_catalogue() throws InterruptedException {
        ThingTransfer dragged = new ThingTransfer(List.of(SampleKit.LARGE, SampleKit.HAND));
        perform(() -> table().getTransferHandler()
                .importData(new javax.swing.TransferHandler.TransferSupport(table(), dragged)));

        assertThat(desk.nextUndo()).contains("Add 2 pieces to Chair 2");
        assertThat(kit().pieces()).hasSize(5);
    }

    @Test
    void what_a_sequence_asks_for_and_the_kit_has_not_is_missing_in_grid_and_list() {
        assertThat(column("kit.grid", 0)).containsExactly("15", "25", "40");
        assertThat(column("kit.grid", 2)).containsExactly("", "", "25 mm missing");
        assertThat(column("kit.grid", 3)).containsExactly("", "25 mm × 2", "");
        assertThat(column("kit.coverage", 1)).containsExactly("1 of 2");
    }

    @Test
    void a_motor_is_set_against_every_powered_instrument() {
        // the maker states 250 to 350 rpm, the motor reaches 300
        assertThat(column("kit.motors", 1)).containsExactly("1 of 1");
        assertThat(column("kit.fits", 2)).containsExactly("250 rpm to 300 rpm, 1 N·cm to 2.5 N·cm");
    }

    @Test
    void the_card_is_saved_as_one_page_with_its_cautions(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("card.html");
        Shots.onEventThread(() -> {
            ((CardPane) find(panel, "kit.card").getParent().getParent().getParent()).write(file);
            return Optional.empty();
        });

        assertThat(Files.readString(file))
                .startsWith("<!DOCTYPE html>")
                .contains("Chair 2", "licensed clinical judgement");
    }

    @Test
    void without_a_kit_the_window_says_what_to_do_and_makes_one() throws InterruptedException {
        close();
        open(Map.of());
        assertThat(find(panel, "kit.empty").isVisible()).isTrue();

        press("kit.empty.New kit");

        assertThat(desk.nextUndo()).contains("Add Kit 1");
        assertThat(find(panel, "kit.empty").isVisible()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"false, 1", "false, 2", "true, 1", "true, 2"})
    void every_tab_draws_in_the_theme(boolean dark, double scale) throws InterruptedException {
        Shots.theme(dark);
        close();
        desk = Shots.onEventThread(() -> new BareDesk(SampleKit.things()));
        panel = Shots.onEventThread(() -> {
            KitPanel made = new KitPanel(desk);
            made.attach();
            return made;
        });
        desk.settle();
        String look = (dark ? "dark" : "light") + "-" + (int) scale;
        JTabbedPane tabs = (JTabbedPane) find(panel, "kit.tabs");
        for (int i = 0; i < tabs.getTabCount(); i++) {
            int tab = i;
            perform(() -> tabs.setSelectedIndex(tab));
            Shots.take("kit-" + i + "-" + look, panel, 1180, 480, scale);
        }
        assertThat(tabs.getTabCount()).isEqualTo(6);
    }

    private Kit kit() {
        return desk.snapshot().thing(SampleKit.KIT, Kit.class).orElseThrow();
    }

    private Piece piece(String id) {
        return kit().piece(id).orElseThrow();
    }

    private JTable table() {
        return (JTable) find(panel, "kit.pieces");
    }

    private void select(String piece) throws InterruptedException {
        int row = column("kit.pieces", 1).indexOf(piece);
        perform(() -> table().setRowSelectionInterval(row, row));
    }

    private List<String> column(String name, int column) {
        JTable table = (JTable) find(panel, name);
        return IntStream.range(0, table.getRowCount())
                .mapToObj(row -> String.valueOf(table.getValueAt(row, column)))
                .toList();
    }

    private void press(String button) throws InterruptedException {
        perform(() -> ((AbstractButton) find(panel, button)).doClick());
    }

    private void perform(Runnable action) throws InterruptedException {
        Shots.onEventThread(() -> {
            action.run();
            return Optional.empty();
        });
        desk.settle();
        desk.settle();
    }

    private static Component find(Container in, String name) {
        return search(in, name).orElseThrow(() -> new AssertionError("no component " + name));
    }

    private static Optional<Component> search(Container in, String name) {
        for (Component child : in.getComponents()) {
            if (name.equals(child.getName())) {
                return Optional.of(child);
            }
            Optional<Component> found = child instanceof Container inner ? search(inner, name) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}
