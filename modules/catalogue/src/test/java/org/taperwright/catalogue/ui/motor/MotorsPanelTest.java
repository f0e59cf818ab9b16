package org.taperwright.catalogue.ui.motor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.catalogue.ui.Panels;
import org.taperwright.catalogue.ui.SampleLibrary;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.Shots;

class MotorsPanelTest {
    @Test
    void a_motor_is_entered_by_its_ranges_and_what_it_cannot_drive_is_told_with_the_reason()
            throws InterruptedException {
        Shots.theme(false);
        try (BareDesk desk = Shots.onEventThread(() -> new BareDesk(SampleLibrary.things()))) {
            MotorsPanel panel = opened(desk);
            assertThat(Panels.find(panel, "motor.empty").isVisible()).isTrue();

            Panels.perform(desk, () -> ((AbstractButton) Panels.find(panel, "motor.empty.New motor")).doClick());
            // the rotary file's maker states 250 to 400 rpm and 1 to 2.5 N·cm
            assertThat(column(panel, "motor.driven", 0)).containsExactly("Fen rotary 25");
            assertThat(column(panel, "motor.driven", 1)).containsExactly("250 rpm to 400 rpm, 1 N·cm to 2.5 N·cm");

            enter(desk, panel, "motor.speed.text", "50-200");

            assertThat(desk.nextUndo()).contains("Speed of Motor 1 to 50–200 rpm");
            assertThat(column(panel, "motor.driven", 0)).isEmpty();
            assertThat(column(panel, "motor.others", 2).get(0)).contains("needs a speed of 250 rpm to 400 rpm");

            Panels.perform(desk, desk::undo);
            assertThat(column(panel, "motor.driven", 0)).containsExactly("Fen rotary 25");
        }
    }

    @ParameterizedTest
    @CsvSource({"false, 1", "true, 2"})
    void the_panel_draws_in_the_theme(boolean dark, double scale) throws InterruptedException {
        Shots.theme(dark);
        try (BareDesk desk = Shots.onEventThread(() -> new BareDesk(SampleLibrary.things()))) {
            MotorsPanel panel = opened(desk);
            Panels.perform(desk, () -> ((AbstractButton) Panels.find(panel, "motor.empty.New motor")).doClick());
            var picture =
                    Shots.take("motors-" + (dark ? "dark" : "light") + "-" + (int) scale, panel, 1100, 400, scale);
            assertThat(picture.getWidth()).isEqualTo((int) (1100 * scale));
        }
    }

    private static MotorsPanel opened(BareDesk desk) throws InterruptedException {
        MotorsPanel panel = Shots.onEventThread(() -> {
            MotorsPanel made = new MotorsPanel(desk);
            made.attach();
            return made;
        });
        desk.settle();
        return panel;
    }

    private static void enter(BareDesk desk, MotorsPanel panel, String field, String text) throws InterruptedException {
        Panels.perform(desk, () -> {
            JTextField found = (JTextField) Panels.find(panel, field);
            found.setText(text);
            found.postActionEvent();
        });
    }

    private static List<String> column(MotorsPanel panel, String table, int column) {
        JTable found = (JTable) Panels.find(panel, table);
        return IntStream.range(0, found.getRowCount())
                .mapToObj(row -> String.valueOf(found.getValueAt(row, column)))
                .toList();
    }
}
