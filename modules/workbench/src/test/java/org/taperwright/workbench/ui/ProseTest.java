package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Point;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Texts that stand in a scrolled form stay where they are when they change. */
class ProseTest {
    private static final String LONG = "one line after another\n".repeat(40);

    @BeforeEach
    void theme() {
        Shots.theme(false);
    }

    @Test
    void a_new_text_does_not_scroll_what_it_stands_in() {
        Prose prose = Shots.onEventThread(() -> new Prose("short", Ink::text, false));

        assertThat(placeAfter(prose, () -> prose.setText(LONG))).isEqualTo(new Point(0, 0));
    }

    @Test
    void it_does_not_after_a_change_of_theme_either() {
        Prose prose = Shots.onEventThread(() -> new Prose("short", Ink::text, false));
        Shots.theme(true);
        Shots.onEventThread(() -> {
            prose.updateUI();
            return prose;
        });

        assertThat(placeAfter(prose, () -> prose.setText(LONG))).isEqualTo(new Point(0, 0));
    }

    @Test
    void lines_shown_from_elsewhere_do_not_scroll_the_form() {
        NameField.Lines lines = Shots.onEventThread(() -> new NameField.Lines("note", "Note", 3));

        assertThat(placeAfter(lines, () -> lines.setValue(LONG))).isEqualTo(new Point(0, 0));
    }

    /** Where the form stands after something was done to a component at its far end. */
    private static Point placeAfter(JComponent last, Runnable done) {
        JPanel tall = new JPanel(new BorderLayout());
        tall.setPreferredSize(new Dimension(200, 2000));
        tall.add(last, BorderLayout.SOUTH);
        JScrollPane scroll = Shots.onEventThread(() -> new JScrollPane(tall));
        Shots.layOut(scroll, 220, 120);
        Shots.onEventThread(() -> {
            done.run();
            return scroll;
        });
        Shots.layOut(scroll, 220, 120);
        return Shots.onEventThread(() -> scroll.getViewport().getViewPosition());
    }
}
