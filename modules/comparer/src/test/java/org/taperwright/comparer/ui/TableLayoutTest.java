package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.ui.Shots;
import org.taperwright.workbench.ui.XyPlot;

class TableLayoutTest {
    private OpenPanel open;
    private JTable table;

    @BeforeEach
    void open() throws InterruptedException {
        open = OpenPanel.of(SampleDesigns.library());
        table = open.find("comparison.table", JTable.class);
    }

    @AfterEach
    void close() {
        open.close();
    }

    @Test
    void a_pinned_metric_stands_on_top_and_undo_puts_it_back() throws InterruptedException {
        select("Torque at fracture");
        open.perform(() -> open.find("comparison.pin", AbstractButton.class).doClick());

        assertThat(open.desk().nextUndo()).contains("Pin Torque at fracture");
        assertThat(labels()).startsWith("Pinned", "Torque at fracture", "Flexibility", "Flexibility");
        assertThat(open.comparison().rows().pinned()).containsExactly("fracture-torque");

        open.perform(open.desk()::undo);

        assertThat(labels()).startsWith("Flexibility", "Flexibility").doesNotContain("Pinned");
    }

    @Test
    void keys_pin_hide_and_move() throws InterruptedException {
        select("Torque at fracture");
        press("P");
        select("Chip space");
        press("P");
        assertThat(labels()).startsWith("Pinned", "Torque at fracture", "Chip space");

        press("alt UP");
        assertThat(labels()).startsWith("Pinned", "Chip space", "Torque at fracture");

        select("Cutting edges");
        press("H");
        assertThat(labels()).doesNotContain("Cutting edges");
        open.perform(
                () -> open.find("comparison.hiddenToo", AbstractButton.class).doClick());
        assertThat(labels()).contains("Cutting edges");
    }

    @Test
    void rows_can_be_sorted_by_how_far_a_design_is_from_the_datum() throws InterruptedException {
        open.perform(() -> open.find("comparison.order", JComboBox.class).setSelectedIndex(2));
        List<Double> distances = new ArrayList<>();
        for (int i = 0; i < table.getRowCount(); i++) {
            if (open.model().row(i) instanceof TableRow.MetricLine line) {
                ComparisonRow row = line.row();
                row.cells().get(1).ratio().ifPresent(ratio -> {
                    if (ratio > 0) {
                        distances.add(Math.abs(Math.log(ratio)));
                    }
                });
            }
        }
        assertThat(distances).hasSizeGreaterThan(10).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void definitions_are_shown_whole_or_only_where_they_differ() throws InterruptedException {
        JComboBox<?> definition = open.find("comparison.definition", JComboBox.class);
        open.perform(() -> definition.setSelectedIndex(1));
        assertThat(labels())
                .startsWith("Definition", "Taper", "Section", "Alloy")
                .doesNotContain("Motion");
        assertThat(table.getValueAt(1, 3)).isEqualTo(".06");

        open.perform(() -> definition.setSelectedIndex(2));
        assertThat(labels()).contains("Motion", "Turning sense", "Diameter at the tip");
    }

    @Test
    void enter_on_a_row_shows_the_curve_along_the_blade_behind_it() throws InterruptedException {
        select("Torsional stiffness");
        press("ENTER");
        assertThat(open.find("comparison.profiles", XyPlot.class).plot().y().title())
                .startsWith("Torsional stiffness");
    }

    @Test
    void rows_keep_their_heights_when_the_theme_changes() throws InterruptedException {
        List<Integer> before = heights();
        assertThat(before.stream().distinct()).hasSizeGreaterThan(1);
        open.perform(() -> {
            Shots.theme(true);
            SwingUtilities.updateComponentTreeUI(open.panel());
        });
        assertThat(heights()).isEqualTo(before);
    }

    /** A design or instrument chosen elsewhere is none of its business; another comparison is. */
    @Test
    void only_the_selection_of_another_comparison_shows_anything_anew() throws InterruptedException {
        AtomicInteger told = new AtomicInteger();
        open.model().addTableModelListener(event -> told.incrementAndGet());
        open.perform(() -> open.desk().select(SampleDesigns.EXTRA));
        assertThat(told).hasValue(0);

        ThingId other = new ThingId("other");
        open.perform(() -> {
            open.desk()
                    .edit(
                            "Another",
                            List.of(new Change.Put(
                                    other,
                                    new SavedComparison(
                                            "Two",
                                            List.of(SampleDesigns.NITI, SampleDesigns.EXTRA),
                                            SampleDesigns.NITI,
                                            ""))));
            open.desk().select(other);
        });
        assertThat(table.getColumnName(1)).isEqualTo("Marsh superelastic square");
    }

    private List<Integer> heights() {
        List<Integer> heights = new ArrayList<>();
        for (int row = 0; row < table.getRowCount(); row++) {
            heights.add(table.getRowHeight(row));
        }
        return heights;
    }

    private void select(String label) throws InterruptedException {
        int row = labels().lastIndexOf(label);
        open.perform(() -> table.setRowSelectionInterval(row, row));
    }

    private List<String> labels() {
        List<String> labels = new ArrayList<>();
        for (int row = 0; row < table.getRowCount(); row++) {
            labels.add(String.valueOf(table.getValueAt(row, 0)));
        }
        return labels;
    }

    private void press(String key) throws InterruptedException {
        open.perform(() -> {
            Object name = table.getInputMap().get(KeyStroke.getKeyStroke(key));
            table.getActionMap().get(name).actionPerformed(new ActionEvent(table, 0, key));
        });
    }
}
