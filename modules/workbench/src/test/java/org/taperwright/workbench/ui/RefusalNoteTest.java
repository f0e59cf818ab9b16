package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.workbench.api.RefusedEdit;

class RefusalNoteTest {
    private static final RefusedEdit REFUSED = new RefusedEdit(
            "Lot of K-type file 25 to b-7",
            List.of(Fault.impossible(
                    "library", "may only be looked at by you", "expected its owner to let you edit it")));
    private final JTextField field = new JTextField("b-7");
    private JRootPane root;

    @BeforeEach
    void open() {
        Shots.theme(false);
        root = Shots.onEventThread(() -> {
            JPanel form = new JPanel(null);
            field.setBounds(380, 250, 100, 24);
            form.add(field);
            JRootPane made = new JRootPane();
            made.setContentPane(form);
            return made;
        });
        Shots.layOut(root, 500, 300);
    }

    @Test
    void says_which_edit_was_not_made_and_why_within_the_window() {
        show(REFUSED.sentence());

        assertThat(Gestures.named(root, "refusal.note.text", Prose.class).getText())
                .isEqualTo(
                        "“Lot of K-type file 25 to b-7” was not done: library may only be looked at by you; expected "
                                + "its owner to let you edit it. Nothing was changed.");
        RefusalNote note = Gestures.named(root, "refusal.note", RefusalNote.class);
        assertThat(root.getLayeredPane().getBounds().contains(note.getBounds())).isTrue();
        assertThat(note.getBounds().intersects(field.getBounds()))
                .as("the field stays seen")
                .isFalse();
        Shots.take("refusal-note", root, 500, 300, 1);
    }

    @Test
    void a_newer_one_takes_the_place_of_the_older() {
        show("first");
        show("second");

        assertThat(notes()).isEqualTo(1);
        assertThat(Gestures.named(root, "refusal.note.text", Prose.class).getText())
                .isEqualTo("second");
    }

    @Test
    void the_button_escape_and_the_next_edit_take_it_away() {
        show("first");
        Shots.onEventThread(() -> {
            Gestures.named(root, "refusal.note.close", AbstractButton.class).doClick();
            return Optional.empty();
        });
        assertThat(notes()).isZero();

        show("second");
        RefusalNote note = Gestures.named(root, "refusal.note", RefusalNote.class);
        assertThat(note.getInputMap(JPanel.WHEN_IN_FOCUSED_WINDOW).get(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0)))
                .isEqualTo("close");

        Shots.onEventThread(() -> {
            RefusalNote.takeAway(field);
            return Optional.empty();
        });
        assertThat(notes()).isZero();
    }

    private void show(String sentence) {
        Shots.onEventThread(() -> {
            RefusalNote.show(field, sentence);
            return Optional.empty();
        });
    }

    private long notes() {
        return Gestures.all(root).stream().filter(RefusalNote.class::isInstance).count();
    }
}
