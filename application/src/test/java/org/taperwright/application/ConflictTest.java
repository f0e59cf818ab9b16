package org.taperwright.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** Two programs on one library: the later edit is not stored before a person has seen both versions and chosen. */
@WindowTest
class ConflictTest {
    @Test
    void whoeverComesLaterSeesBothVersionsAndChooses(Hands hands) throws IOException {
        Fields fields = new Fields(hands);
        hands.choose("Window", "Instruments");
        fields.select(hands.find("instruments.table", JTable.class), 0);
        JTextField shown = hands.find("instrument.name", JTextField.class);
        hands.await("the name", () -> !shown.getText().isEmpty());
        Process other = otherProgram(hands.onEventThread(shown::getText));
        try (BufferedReader answers = other.inputReader(StandardCharsets.UTF_8)) {
            assertThat(answers.readLine()).isEqualTo("ready");
            JTextField lot = hands.find("instrument.lot", JTextField.class);
            // entered in the moment the other stores, before the workbench can have heard of it
            hands.onEventThread(() -> {
                assertThat(told(other, answers, "theirs")).isEqualTo("Appended");
                lot.setText("mine");
                lot.postActionEvent();
                return lot;
            });
            JTable both = hands.find("conflict.fields", JTable.class);
            Screen.keep("conflict");
            assertThat(List.of(both.getValueAt(0, 2), both.getValueAt(0, 3))).containsExactly("mine", "theirs");
            hands.clickUntil(
                    hands.find("conflict.told", JComponent.class),
                    "the dialog to have the keys",
                    () -> keysAreIn(both));
            hands.press(KeyEvent.VK_ESCAPE);
            hands.await("the dialog to go", () -> !both.isShowing());
            assertThat(hands.<String>onEventThread(() -> lot.getText()))
                    .as("Escape decides nothing: the edit stays")
                    .isEqualTo("mine");
            JButton again = hands.find("conflict.open", JButton.class);
            Screen.keep("conflict-put-aside");
            hands.clickUntil(again, "the question to come again", () -> hands.shows("conflict.theirs"));
            JButton take = hands.find("conflict.theirs", JButton.class);
            hands.clickUntil(take, "the dialog to go", () -> !take.isShowing());
            fields.awaitText("instrument.lot", "theirs");
            hands.await("the mark to go", () -> !again.isShowing());
        } finally {
            other.destroy();
        }
    }

    private static boolean keysAreIn(Component inside) {
        return SwingUtilities.getWindowAncestor(inside).isFocused();
    }

    private static Process otherProgram(String instrument) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        OtherProgram.class.getName(),
                        System.getProperty("taperwright.library"),
                        instrument)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static String told(Process other, BufferedReader answers, String lot) {
        try {
            other.outputWriter(StandardCharsets.UTF_8).append(lot).append('\n').flush();
            return answers.readLine();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
