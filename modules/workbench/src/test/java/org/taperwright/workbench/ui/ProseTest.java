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
    void a_form_that_is_not_laid_out_yet_begins_at_its_top() {
        Prose prose = Shots.onEventThread(() -> new Prose("first of the form", Ink::text, false));
        JPanel form = new JPanel(new BorderLayout());
        form.setPreferredSize(new Dimension(200, 2000));
        form.setBorder(Spacing.around(Spacing.NEAR));
        form.add(prose, BorderLayout.NORTH);
        JScrollPane scroll = Shots.onEventThread(() -> new JScrollPane(form));
        prose.setBounds(8, 8, 184, 20);
        Shots.onEventThread(() -> {
            prose.setText("another");
            return scroll;
        });
        Shots.onEventThread(() -> scroll);
        Shots.layOut(scroll, 220, 120);

        assertThat(Shots.onEventThread(() -> scroll.getViewport().getViewPosition()))
                .isEqualTo(new Point(0, 0));
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
