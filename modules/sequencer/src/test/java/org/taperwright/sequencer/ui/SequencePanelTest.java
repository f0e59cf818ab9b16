package org.taperwright.sequencer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.sequencer.SampleSequence;
import org.taperwright.sequencer.scene.SceneContent;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.MemorySettings;
import org.taperwright.workbench.ui.Shots;

/** The panel on a desk in memory, without a display; the keys on a component that stands for the scene's view. */
class SequencePanelTest {
    private BareDesk desk;
    private SequencePanel panel;
    private JComponent keys;

    @BeforeEach
    void open() throws InterruptedException {
        open(SampleSequence.things());
    }

    private void open(Map<ThingId, Record> things) throws InterruptedException {
        Shots.theme(false);
        desk = Shots.onEventThread(() -> new BareDesk(things));
        panel = Shots.onEventThread(() -> {
            SequencePanel made = new SequencePanel(desk, closedOutcome());
            made.attach();
            return made;
        });
        keys = Shots.onEventThread(() -> {
            JPanel stand = new JPanel();
            SequenceKeys.on(stand, panel.board());
            return stand;
        });
        desk.settle();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void alt_down_moves_the_selected_step_and_undo_moves_it_back() throws InterruptedException {
        press("alt DOWN");

        assertThat(desk.nextUndo()).contains("Move step 1 to place 2");
        assertThat(instruments()).containsExactly(SampleSequence.NARROW, SampleSequence.HAND, SampleSequence.WIDE);
        assertThat(content().selected()).isEqualTo(1);

        perform(desk::undo);

        assertThat(instruments()).containsExactly(SampleSequence.HAND, SampleSequence.NARROW, SampleSequence.WIDE);
    }

    @Test
    void arrows_select_another_step_and_stop_at_the_ends() throws InterruptedException {
        press("DOWN");
        press("DOWN");
        press("DOWN");
        assertThat(content().selected()).isEqualTo(2);

        press("UP");
        assertThat(content().selected()).isEqualTo(1);
    }

    @Test
    void holding_an_arrow_tries_depths_and_releasing_it_makes_one_edit() throws InterruptedException {
        press("LEFT");
        press("LEFT");
        press("LEFT");

        assertThat(content().lanes().get(0).depthMm()).isEqualTo(16.0);
        assertThat(desk.nextUndo()).isEmpty();

        press("released LEFT");

        assertThat(desk.nextUndo()).contains("Step 1 depth 16 mm");
        assertThat(sequence().steps().get(0).depthMm(17.5)).isEqualTo(16.0);

        perform(desk::undo);

        assertThat(content().lanes().get(0).depthMm()).isEqualTo(17.5);
        assertThat(desk.nextUndo()).isEmpty();
    }

    @Test
    void delete_removes_and_insert_adds_the_instrument_selected_in_the_catalogue() throws InterruptedException {
        press("DELETE");
        assertThat(desk.nextUndo()).contains("Remove step 1");

        perform(() -> desk.select(SampleSequence.EXTRA));
        press("INSERT");

        assertThat(desk.nextUndo()).contains("Add step 2, Fen rotary 30");
        assertThat(instruments()).containsExactly(SampleSequence.NARROW, SampleSequence.EXTRA, SampleSequence.WIDE);
        assertThat(content().selected()).isEqualTo(1);
    }

    @Test
    void an_edit_of_an_instrument_elsewhere_changes_what_is_computed() throws InterruptedException {
        double before = content().lanes().get(1).geometry().orElseThrow().greatestExcessMm();
        perform(() -> desk.edit(
                "Swap",
                List.of(new org.taperwright.library.history.Change.Put(
                        SampleSequence.NARROW,
                        desk.snapshot().entry(SampleSequence.WIDE).orElseThrow().thing()))));

        assertThat(content().lanes().get(1).geometry().orElseThrow().greatestExcessMm())
                .isGreaterThan(before);
        assertThat(content().lanes().get(1).outdated()).isFalse();
    }

    @Test
    void choosing_no_motor_is_a_named_edit() throws InterruptedException {
        JComboBox<?> motor = (JComboBox<?>) find(panel, "sequence.motor");
        perform(() -> motor.setSelectedIndex(0));

        assertThat(desk.nextUndo()).contains("No motor");
        assertThat(sequence().motor()).isEmpty();
    }

    @Test
    void the_form_shows_the_selected_step_in_the_trades_units() throws InterruptedException {
        press("DOWN");

        assertThat(text("step.speed.text")).isEqualTo("300 rpm");
        assertThat(text("step.torque.text")).isEqualTo("2.0 N·cm");
        assertThat(text("step.depth.text")).isEqualTo("17.5 mm");
    }

    @Test
    void checks_speak_of_what_is_out_of_the_motors_range() throws InterruptedException {
        perform(() -> panel.board().apply(SequenceEdits.speed(sequence(), 1, Optional.of(900.0))));

        assertThat(find(panel, "fault.steps[1].speedRpm")).isNotNull();
    }

    @Test
    void irrigation_patency_and_recapitulation_are_added_by_their_keys_moved_and_removed() throws InterruptedException {
        for (BetweenKind kind : BetweenKind.values()) {
            press(String.valueOf(kind.key()));
            assertThat(desk.nextUndo().orElseThrow())
                    .startsWith("Add step")
                    .endsWith(kind.name().toLowerCase(Locale.ROOT));
        }
        assertThat(sequence().steps()).hasSize(6);
        assertThat(sequence().steps().subList(1, 4))
                .extracting(Step::word)
                .containsExactly("irrigation", "patency", "recapitulation");
        assertThat(content().lanes().get(1).words(6))
                .isEqualTo("Step 2 of 6: 30G, sodium hypochlorite 2.5 %, 15.5 mm, irrigation");

        press("UP");
        press("UP");
        press("alt UP");
        assertThat(sequence().steps().get(0).word()).isEqualTo("irrigation");
        press("DELETE");
        assertThat(sequence().steps()).hasSize(5);
    }

    @Test
    void the_menu_adds_every_kind_and_says_by_which_key() throws InterruptedException {
        JPopupMenu menu = Shots.onEventThread(() -> StepMenu.between(panel.board()));
        assertThat(menu.getSubElements()).hasSize(BetweenKind.values().length);
        JMenuItem patency = (JMenuItem) find(menu, "menu.Add patency");
        assertThat(patency.getAccelerator()).isEqualTo(KeyStroke.getKeyStroke("P"));

        perform(patency::doClick);

        assertThat(desk.nextUndo()).contains("Add step 2, patency");
        assertThat(sequence().steps().get(1))
                .isInstanceOfSatisfying(
                        Patency.class,
                        step -> assertThat(step.instrument())
                                .as("the smallest of the sequence")
                                .isEqualTo(SampleSequence.HAND));
    }

    @Test
    void an_irrigations_fields_are_edits_by_name() throws InterruptedException {
        press("I");
        JComboBox<?> irrigant = (JComboBox<?>) find(panel, "step.irrigant");
        perform(() -> irrigant.setSelectedItem("saline"));
        assertThat(desk.nextUndo()).contains("Step 2 irrigant saline");
        perform(() -> irrigant.setSelectedItem("tap water, boiled"));
        assertThat(desk.nextUndo()).contains("Step 2 irrigant tap water, boiled");
        perform(() -> irrigant.setSelectedItem(" "));
        assertThat(desk.nextUndo()).as("no name is no irrigant").contains("Step 2 irrigant tap water, boiled");
        assertThat(irrigant.getSelectedItem()).isEqualTo("tap water, boiled");
        JComboBox<?> needle = (JComboBox<?>) find(panel, "step.needle");
        perform(() -> needle.setSelectedItem(NeedleGauge.G27));
        assertThat(desk.nextUndo()).contains("Step 2 needle 27G");
        press("LEFT");
        press("released LEFT");
        assertThat(desk.nextUndo()).contains("Step 2 depth 15 mm");

        assertThat(sequence().steps().get(1))
                .isEqualTo(new Irrigation(NeedleGauge.G27, 15, 1, "tap water, boiled", ""));
        perform(desk::undo);
        perform(desk::undo);
        assertThat(sequence().steps().get(1))
                .isEqualTo(new Irrigation(NeedleGauge.G30, 15.5, 1, "tap water, boiled", ""));
    }

    @Test
    void the_file_of_a_patency_is_chosen_among_those_of_the_sequence_and_the_one_selected()
            throws InterruptedException {
        perform(() -> desk.select(SampleSequence.EXTRA));
        press("P");
        JComboBox<?> file = (JComboBox<?>) find(panel, "step.patencyFile");
        assertThat(file.getItemCount()).isEqualTo(4);
        perform(() -> file.setSelectedIndex(1));

        assertThat(desk.nextUndo()).contains("Step 2 file Fen rotary 20");
        assertThat(sequence().steps().get(1).uses()).contains(SampleSequence.NARROW);
        press("LEFT");
        press("released LEFT");
        assertThat(desk.nextUndo())
                .as("its depth follows from the working length")
                .contains("Step 2 file Fen rotary 20");
    }

    @Test
    void an_empty_library_says_what_to_do_next() throws InterruptedException {
        close();
        open(Map.of());

        assertThat(find(panel, "sequence.empty").isVisible()).isTrue();
    }

    @Test
    void a_new_sequence_is_begun_in_the_first_canal() throws InterruptedException {
        close();
        open(Map.of(SampleSequence.CANAL, SampleSequence.canal()));
        perform(panel.board()::begin);

        assertThat(desk.nextUndo()).contains("New sequence");
        assertThat(panel.board().stored().orElseThrow().canal()).contains(SampleSequence.CANAL);
    }

    /** These tests are about the lanes: nothing is computed beneath them. */
    private static MemorySettings closedOutcome() {
        MemorySettings settings = new MemorySettings();
        settings.putBoolean("outcome.open", false);
        return settings;
    }

    private SceneContent content() {
        return panel.scene().content().orElseThrow();
    }

    private Sequence sequence() {
        return desk.snapshot().thing(SampleSequence.SEQUENCE, Sequence.class).orElseThrow();
    }

    private List<ThingId> instruments() {
        return sequence().steps().stream().flatMap(step -> step.uses().stream()).toList();
    }

    private String text(String field) {
        return ((javax.swing.text.JTextComponent) find(panel, field)).getText();
    }

    private void press(String key) throws InterruptedException {
        Object name = keys.getInputMap().get(KeyStroke.getKeyStroke(key));
        perform(() -> keys.getActionMap().get(name).actionPerformed(new ActionEvent(keys, 0, key)));
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
