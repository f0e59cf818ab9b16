package org.taperwright.catalogue.ui.past;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.catalogue.ui.Panels;
import org.taperwright.catalogue.ui.SampleLibrary;
import org.taperwright.library.history.Change;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.Shots;

class HistoryPanelTest {
    @Test
    void each_step_says_what_it_changed_two_are_compared_and_one_is_brought_back() throws InterruptedException {
        Shots.theme(false);
        try (BareDesk desk = Shots.onEventThread(() -> new BareDesk(SampleLibrary.things()))) {
            HistoryPanel panel = edited(desk);

            assertThat(column(panel, "history.steps", 3))
                    .containsExactly("Maker of K-type file 25", "Line of K-type file 25", "Open");
            assertThat(column(panel, "history.fields", 0)).containsExactly("maker");

            JTable steps = (JTable) Panels.find(panel, "history.steps");
            Panels.perform(desk, () -> {
                steps.setRowSelectionInterval(0, 0);
                steps.addRowSelectionInterval(2, 2);
            });
            assertThat(column(panel, "history.fields", 0)).containsExactlyInAnyOrder("maker", "line");
            assertThat(Panels.find(panel, "history.back").isEnabled()).isFalse();

            Panels.perform(desk, () -> steps.setRowSelectionInterval(2, 2));
            Panels.perform(desk, () -> ((AbstractButton) Panels.find(panel, "history.back")).doClick());

            assertThat(desk.snapshot().thing(SampleLibrary.HAND_25, Instrument.class))
                    .contains(SampleLibrary.hand(25));
            assertThat(desk.nextUndo())
                    .hasValueSatisfying(name -> assertThat(name).startsWith("Bring back"));
            assertThat(column(panel, "history.steps", 3)).hasSize(4);
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void the_panel_draws_in_the_theme(boolean dark) throws InterruptedException {
        Shots.theme(dark);
        try (BareDesk desk = Shots.onEventThread(() -> new BareDesk(SampleLibrary.things()))) {
            HistoryPanel panel = edited(desk);
            assertThat(Shots.take("history-" + (dark ? "dark" : "light") + "-2", panel, 760, 440, 2)
                            .getWidth())
                    .isEqualTo(1520);
        }
    }

    private static HistoryPanel edited(BareDesk desk) throws InterruptedException {
        Instrument before = SampleLibrary.hand(25);
        Instrument other = before.draft().line("Moor").instrument();
        Panels.perform(desk, () -> put(desk, "Line of K-type file 25", other));
        Panels.perform(
                desk,
                () -> put(
                        desk,
                        "Maker of K-type file 25",
                        other.draft().maker("Heron").instrument()));
        HistoryPanel panel = Shots.onEventThread(() -> new HistoryPanel(desk, SampleLibrary.HAND_25));
        desk.settle();
        return panel;
    }

    private static void put(BareDesk desk, String name, Instrument instrument) {
        desk.edit(name, List.of(new Change.Put(SampleLibrary.HAND_25, instrument)));
    }

    private static List<String> column(HistoryPanel panel, String table, int column) {
        JTable found = (JTable) Panels.find(panel, table);
        return IntStream.range(0, found.getRowCount())
                .mapToObj(row -> String.valueOf(found.getValueAt(row, column)))
                .toList();
    }
}
