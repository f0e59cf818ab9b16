package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JSlider;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.GivesAndTakes;

class ScoreAndWordsTest {
    private OpenPanel open;

    @BeforeEach
    void open() throws InterruptedException {
        open = OpenPanel.of(SampleDesigns.library());
    }

    @AfterEach
    void close() {
        open.close();
    }

    @Test
    void a_slider_weighs_a_metric_as_one_named_edit_and_the_score_shows_all_it_is_made_of()
            throws InterruptedException {
        JSlider slider = open.find("comparison.score.weight.flexibility", JSlider.class);
        open.perform(() -> slider.setValue(20));

        assertThat(open.desk().nextUndo()).contains("Weight of Flexibility");
        assertThat(open.comparison().weights().of("flexibility")).isEqualTo(2);
        JTable table = open.find("comparison.score.table", JTable.class);
        assertThat(table.getValueAt(0, 0)).isEqualTo("Flexibility");
        assertThat(table.getValueAt(1, 0)).isEqualTo("Sum");
        assertThat(table.getValueAt(0, 3)).asString().startsWith("+");
        assertThat(table.getValueAt(1, 2)).isEqualTo("0.00");

        open.perform(open.desk()::undo);

        assertThat(slider.getValue()).isZero();
        assertThat(table.getRowCount()).isZero();
    }

    @Test
    void a_purpose_sets_weights_and_the_words_say_how_far_they_can_move() throws InterruptedException {
        JComboBox<?> purpose = open.find("comparison.score.purpose", JComboBox.class);
        open.perform(() -> purpose.setSelectedIndex(0));

        assertThat(open.comparison().weights().isEmpty()).isFalse();
        assertThat(open.find("comparison.score.words", JTextComponent.class).getText())
                .startsWith("By these weights: ")
                .contains("stays while no weight moves by more than");
    }

    @Test
    void sentences_say_what_each_gives_and_takes() {
        Comparison table = open.model().compared().orElseThrow().comparison().orElseThrow();
        String words = open.find("comparison.sentence", JTextComponent.class).getText();

        assertThat(words)
                .isEqualTo(String.join(
                        "\n", GivesAndTakes.of(table, 1).orElseThrow().sentences()))
                .contains("times as flexible");
    }

    @Test
    void kept_results_are_saved_and_said_to_be_the_same_or_not() throws InterruptedException {
        assertThat(kept()).startsWith("No results are kept");
        open.perform(() -> open.find("comparison.keep", AbstractButton.class).doClick());

        assertThat(open.desk().nextUndo()).contains("Keep the results");
        assertThat(open.comparison().kept()).isPresent();
        assertThat(kept()).contains("numbers are what they were");

        open.perform(() -> open.desk()
                .edit(
                        "Taper to .08",
                        List.of(new Change.Put(
                                SampleDesigns.TRIANGLE,
                                SampleDesigns.design(
                                        "Fen superelastic triangle", "triangle", "niti-superelastic", 0.08)))));

        assertThat(kept()).contains("numbers differ now", "edited since");
    }

    private String kept() {
        return open.find("comparison.kept", JTextComponent.class).getText();
    }
}
