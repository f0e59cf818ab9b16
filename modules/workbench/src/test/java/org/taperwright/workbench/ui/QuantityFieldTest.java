package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class QuantityFieldTest {
    private final List<Double> previews = new ArrayList<>();
    private final List<Double> commits = new ArrayList<>();
    private QuantityField field;
    private JTextField text;

    @BeforeEach
    void open() {
        Shots.theme(false);
        field = Shots.onEventThread(() -> {
            QuantityField made = new QuantityField("size", "Tip diameter", QuantityKind.diameter(0.06, 1.4, 0.01));
            made.setValue(0.25);
            return made.onPreview(value -> {
                        previews.add(value);
                        made.setValue(value);
                    })
                    .onCommit(commits::add);
        });
        text = (JTextField) field.entry();
    }

    @Test
    void showing_a_value_tells_no_one() {
        assertThat(text.getText()).isEqualTo("0.25 mm");
        assertThat(previews).isEmpty();
        assertThat(commits).isEmpty();
    }

    @Test
    void enter_commits_once_and_writes_the_unit() {
        Gestures.enter(text, "0.3");
        Gestures.leave(text);

        assertThat(commits).containsExactly(0.3);
        assertThat(text.getText()).isEqualTo("0.30 mm");
    }

    @Test
    void leaving_the_field_commits_what_was_typed() {
        Shots.onEventThread(() -> {
            text.setText("0.4 mm");
            return text;
        });
        Gestures.leave(text);

        assertThat(commits).containsExactly(0.4);
    }

    @Test
    void a_held_arrow_previews_and_its_release_commits_once() {
        Gestures.press(text, KeyEvent.VK_UP);
        Gestures.press(text, KeyEvent.VK_UP);
        Gestures.press(text, KeyEvent.VK_UP);
        assertThat(commits).isEmpty();
        Gestures.release(text, KeyEvent.VK_UP);

        assertThat(previews).containsExactly(0.26, 0.27, 0.28);
        assertThat(commits).containsExactly(0.28);
    }

    @Test
    void escape_goes_back_to_the_committed_value() {
        Gestures.press(text, KeyEvent.VK_DOWN);
        Gestures.press(text, KeyEvent.VK_ESCAPE);
        Gestures.release(text, KeyEvent.VK_DOWN);

        assertThat(previews).containsExactly(0.24, 0.25);
        assertThat(commits).isEmpty();
        assertThat(text.getText()).isEqualTo("0.25 mm");
    }

    @Test
    void a_text_that_is_no_quantity_stays_with_what_is_expected_beneath() {
        Gestures.enter(text, "0.25 inch");

        assertThat(commits).isEmpty();
        assertThat(text.getText()).isEqualTo("0.25 inch");
        assertThat(fault()).contains("0.25 inch").contains("a number in mm from 0.06 to 1.40");
    }

    @Test
    void a_value_out_of_range_is_refused_until_it_is_mended() {
        Gestures.enter(text, "3 mm");
        assertThat(fault()).startsWith("Out of range");
        Gestures.enter(text, "0.35 mm");

        assertThat(fault()).isEmpty();
        assertThat(commits).containsExactly(0.35);
    }

    private String fault() {
        Prose fault = Gestures.named(field, "size.fault", Prose.class);
        return fault.isVisible() ? fault.getText() : "";
    }
}
