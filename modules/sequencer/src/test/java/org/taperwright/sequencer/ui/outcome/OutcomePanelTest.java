package org.taperwright.sequencer.ui.outcome;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.Arrangement;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.sequencer.SampleSequence;
import org.taperwright.sequencer.outcome.OutcomeCell;
import org.taperwright.sequencer.outcome.OutcomeColumn;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Sequences;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.Gestures;
import org.taperwright.workbench.ui.Shots;

/** The panel in a bare frame: what it shows while and after it computes, on the sample sequence of three steps. */
class OutcomePanelTest {
    private static final ThingId OTHER = new ThingId("other");

    private final List<Integer> selections = new ArrayList<>();
    private final List<List<Fault>> remarks = new ArrayList<>();
    private BareDesk desk;
    private OutcomePanel panel;

    @BeforeEach
    void open() {
        Shots.theme(false);
        desk = Shots.onEventThread(() -> new BareDesk(things()));
        panel = Shots.onEventThread(() -> new OutcomePanel(desk, selections::add, remarks::add));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static Map<ThingId, Record> things() {
        Map<ThingId, Record> things = new LinkedHashMap<>(SampleSequence.things());
        Sequence sample = (Sequence) things.get(SampleSequence.SEQUENCE);
        things.put(OTHER, Sequences.removed(sample, 2));
        return things;
    }

    private Sequence sequence(ThingId id) {
        return desk.snapshot().thing(id, Sequence.class).orElseThrow();
    }

    private void show(ThingId id, Sequence sequence, boolean settled, int selected) {
        panel.show(id, Arrangement.of(sequence, desk.snapshot()), settled, selected);
    }

    private JTable table() {
        return Gestures.named(panel, "outcome.table", JTable.class);
    }

    private OutcomeCell cell(int row, OutcomeColumn column) {
        return (OutcomeCell) table().getValueAt(row, 1 + column.ordinal());
    }

    private static <T> T on(java.util.function.Supplier<T> work) {
        return Shots.onEventThread(work);
    }

    private static void perform(Runnable work) {
        on(() -> {
            work.run();
            return Optional.empty();
        });
    }

    /** Shaped, then banded by few samples and by all: three computations, each begun when the one before is delivered. */
    private void settle() throws InterruptedException {
        desk.settle();
        desk.settle();
        desk.settle();
    }

    @Test
    void first_the_numbers_stand_there_with_their_bands_to_come_and_then_the_bands() throws InterruptedException {
        List<String> seen = new ArrayList<>();
        List<String> legends = new ArrayList<>();
        perform(() -> {
            table().getModel().addTableModelListener(event -> {
                if (table().getRowCount() > 0) {
                    seen.add(cell(1, OutcomeColumn.TORQUE).toString());
                }
            });
            JLabel legend = Gestures.named(panel, "outcome.legend", JLabel.class);
            legend.addPropertyChangeListener("text", event -> legends.add(legend.getText()));
            show(SampleSequence.SEQUENCE, sequence(SampleSequence.SEQUENCE), true, -1);
            assertThat(table().getRowCount()).isZero();
        });
        settle();

        assertThat(seen).startsWith("… (computing)");
        assertThat(legends).anyMatch(words -> words.endsWith("a first look by 40 samples"));
        assertThat(on(() ->
                        Gestures.named(panel, "outcome.legend", JLabel.class).getText()))
                .endsWith("over what is not known");
        assertThat(on(() -> cell(1, OutcomeColumn.TORQUE).band()))
                .hasValueSatisfying(
                        band -> assertThat(cell(1, OutcomeColumn.TORQUE).value().orElseThrow())
                                .isBetween(band.low(), band.high()));
        assertThat(on(() ->
                        Gestures.named(panel, "outcome.unknowns", JTable.class).getRowCount()))
                .isPositive();
        assertThat(on(() ->
                        Gestures.named(panel, "outcome.needles", JTable.class).getRowCount()))
                .isEqualTo(9);
    }

    @Test
    void a_depth_that_is_only_tried_is_shaped_but_no_bands_are_drawn_for_it() throws InterruptedException {
        perform(() -> show(SampleSequence.SEQUENCE, sequence(SampleSequence.SEQUENCE), false, -1));
        settle();

        assertThat(on(() -> cell(1, OutcomeColumn.TORQUE).bandWords())).isEqualTo("computing");
    }

    @Test
    void an_edit_leaves_the_numbers_marked_as_outdated_until_the_new_ones_come() throws InterruptedException {
        perform(() -> show(SampleSequence.SEQUENCE, sequence(SampleSequence.SEQUENCE), false, -1));
        settle();
        double before = on(() -> cell(2, OutcomeColumn.REMOVED).value().orElseThrow());
        Sequence shallower = Sequences.withDepth(sequence(SampleSequence.SEQUENCE), 2, 12);
        perform(() -> {
            show(SampleSequence.SEQUENCE, shallower, false, -1);
            assertThat(table().isEnabled()).isFalse();
            assertThat(cell(2, OutcomeColumn.REMOVED).value()).contains(before);
        });
        settle();

        assertThat(on(() -> table().isEnabled())).isTrue();
        assertThat(on(() -> cell(2, OutcomeColumn.REMOVED).value().orElseThrow()))
                .isLessThan(before);
    }

    @Test
    void another_sequences_numbers_are_never_shown() throws InterruptedException {
        perform(() -> show(SampleSequence.SEQUENCE, sequence(SampleSequence.SEQUENCE), false, -1));
        settle();
        perform(() -> {
            assertThat(table().getRowCount()).isEqualTo(4);
            show(OTHER, sequence(OTHER), false, -1);
            assertThat(table().getRowCount()).isZero();
        });
        settle();

        assertThat(on(() -> table().getRowCount())).isEqualTo(3);
    }

    @Test
    void going_back_before_the_newer_was_computed_ends_with_what_stands() throws InterruptedException {
        Sequence now = sequence(SampleSequence.SEQUENCE);
        perform(() -> show(SampleSequence.SEQUENCE, now, false, -1));
        settle();
        double before = on(() -> cell(2, OutcomeColumn.REMOVED).value().orElseThrow());
        perform(() -> {
            show(SampleSequence.SEQUENCE, Sequences.withDepth(now, 2, 12), false, -1);
            show(SampleSequence.SEQUENCE, now, false, -1);
        });
        settle();

        assertThat(on(() -> table().isEnabled())).isTrue();
        assertThat(on(() -> cell(2, OutcomeColumn.REMOVED).value())).contains(before);
    }

    @Test
    void a_line_selected_selects_its_step_and_a_step_selected_its_line_with_its_thirds() throws InterruptedException {
        perform(() -> show(SampleSequence.SEQUENCE, sequence(SampleSequence.SEQUENCE), false, 0));
        settle();
        assertThat(on(() -> table().getSelectedRow())).isZero();
        assertThat(on(() -> table().getRowCount())).isEqualTo(4 + 3);
        assertThat(selections).isEmpty();

        perform(() -> table().setRowSelectionInterval(5, 5));
        assertThat(selections).containsExactly(2);

        perform(() -> show(SampleSequence.SEQUENCE, sequence(SampleSequence.SEQUENCE), false, 2));
        assertThat(on(() -> table().getSelectedRow())).isEqualTo(2);
        assertThat(selections).containsExactly(2);

        perform(() -> Gestures.named(panel, "outcome.thirds", JCheckBox.class).doClick());
        assertThat(on(() -> table().getRowCount())).isEqualTo(16);
        assertThat(on(() -> table().getSelectedRow())).isEqualTo(8);
    }

    @Test
    void closed_it_computes_nothing_and_opened_it_catches_up() throws InterruptedException {
        perform(() -> {
            panel.setOpen(false);
            show(SampleSequence.SEQUENCE, sequence(SampleSequence.SEQUENCE), false, -1);
        });
        settle();
        assertThat(on(() -> table().getRowCount())).isZero();

        perform(() -> panel.setOpen(true));
        settle();
        assertThat(on(() -> table().getRowCount())).isEqualTo(4);
    }

    @Test
    void stopped_it_says_so_and_can_be_begun_again() throws InterruptedException {
        perform(() -> {
            show(SampleSequence.SEQUENCE, sequence(SampleSequence.SEQUENCE), false, -1);
            panel.setOpen(false);
            panel.setOpen(true);
        });
        settle();
        assertThat(on(() -> table().getRowCount())).isEqualTo(4);

        Consumer<String> says = words -> assertThat(on(() -> Gestures.named(panel, "outcome.state.words", JLabel.class)
                        .getText()))
                .contains(words);
        perform(() -> {
            show(SampleSequence.SEQUENCE, sequence(SampleSequence.SEQUENCE), true, -1);
            panel.stop();
        });
        settle();
        says.accept("Stopped");

        perform(() ->
                Gestures.named(panel, "outcome.state.button", JButton.class).doClick());
        settle();
        assertThat(on(() -> cell(1, OutcomeColumn.TORQUE).band())).isPresent();
    }

    @Test
    void many_canals_give_a_distribution_and_a_worst_one_goes_into_the_library_with_the_sequence()
            throws InterruptedException {
        perform(() -> {
            show(SampleSequence.SEQUENCE, sequence(SampleSequence.SEQUENCE), false, -1);
            panel.show(
                    SampleSequence.SEQUENCE,
                    Arrangement.of(sequence(SampleSequence.SEQUENCE), desk.snapshot()),
                    true,
                    -1);
            panel.stop();
            Gestures.named(panel, "outcome.canals", org.taperwright.workbench.ui.QuantityField.class)
                    .setValue(3);
            Gestures.named(panel, "outcome.runMany", JButton.class).doClick();
        });
        settle();
        JTable worst = Gestures.named(panel, "outcome.worst", JTable.class);
        assertThat(on(() -> Gestures.named(panel, "outcome.distribution", JTable.class)
                        .getRowCount()))
                .isPositive();
        assertThat(on(() -> Gestures.named(panel, "outcome.manySummary", JTextComponent.class)
                        .getText()))
                .startsWith("3 canals drawn from Lower molar");
        assertThat(on(() ->
                        Gestures.named(panel, "outcome.takeBoth", JButton.class).isEnabled()))
                .isFalse();

        int canals = desk.snapshot().ofKind(ThingKind.CANAL).size();
        perform(() -> {
            worst.setRowSelectionInterval(0, 0);
            Gestures.named(panel, "outcome.takeBoth", JButton.class).doClick();
        });

        assertThat(desk.nextUndo())
                .hasValueSatisfying(name ->
                        assertThat(name).startsWith("Take canal Lower molar").endsWith("with the sequence"));
        assertThat(desk.snapshot().ofKind(ThingKind.CANAL)).hasSize(canals + 1);
        Sequence copy = sequence(desk.selected(ThingKind.SEQUENCE).orElseThrow());
        Canal canal = copy.canal()
                .flatMap(id -> desk.snapshot().thing(id, Canal.class))
                .orElseThrow();
        // the sample's steps go to its working length, so the copies go to that of the other canal
        assertThat(copy.steps())
                .hasSize(3)
                .allSatisfy(step -> assertThat(step.depthMm(canal.workingLengthMm()))
                        .isEqualTo(canal.workingLengthMm(), org.assertj.core.api.Assertions.within(1e-9)));
    }
}
