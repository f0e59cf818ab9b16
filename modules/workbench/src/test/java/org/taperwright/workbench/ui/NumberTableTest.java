package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.FontMetrics;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.quantity.Shown;

class NumberTableTest {
    private final List<String> entered = new ArrayList<>();
    private NumberTable table;

    @BeforeEach
    void open() {
        Shots.theme(false);
        table = Shots.onEventThread(() -> {
            NumberTable made = new NumberTable(
                            "taper",
                            "Taper segments",
                            List.of(
                                    new NumberTable.Column("To (mm)", QuantityKind.length(0, 40, 0.5), true),
                                    new NumberTable.Column("Diameter (mm)", QuantityKind.diameter(0, 5, 0.01), false)))
                    .onEntered((row, column, value) -> entered.add(row + "," + column + "=" + value))
                    .button("Remove", "Take the chosen row out", row -> entered.add("remove " + row));
            made.setRows(List.of(List.of(4.0, 0.3), List.of(16.0, 0.57)));
            return made;
        });
    }

    @Test
    void a_quantity_is_entered_with_or_without_its_unit() {
        assertThat(type(1, 0, "12 mm")).isTrue();
        assertThat(type(0, 0, "5")).isTrue();

        assertThat(entered).containsExactly("1,0=12.0", "0,0=5.0");
    }

    @Test
    void a_text_that_is_no_quantity_keeps_the_cell_open_and_says_what_is_expected() {
        assertThat(type(1, 0, "long")).isFalse();

        assertThat(entered).isEmpty();
        Prose fault = Gestures.named(table, "taper.fault", Prose.class);
        assertThat(fault.isVisible()).isTrue();
        assertThat(fault.getText()).contains("long").contains("a number in mm from 0 to 40");
    }

    @Test
    void what_follows_from_other_columns_cannot_be_edited() {
        assertThat(table.table().isCellEditable(0, 1)).isFalse();
    }

    @Test
    void buttons_act_on_the_chosen_row_and_else_on_the_last() {
        AbstractButton remove = Gestures.named(table, "taper.remove", AbstractButton.class);
        Shots.onEventThread(() -> {
            remove.doClick();
            table.table().setRowSelectionInterval(0, 0);
            remove.doClick();
            return table;
        });

        assertThat(entered).containsExactly("remove 1", "remove 0");
    }

    @Test
    void decimal_points_stand_one_below_the_other() {
        NumberCells cells = new NumberCells(Shown::number, 3);
        Set<Integer> places = DoubleStream.of(0.125, 12.5, 104, 3)
                .mapToObj(value -> Shots.onEventThread(() -> placeOfPoint(cells, value)))
                .collect(Collectors.toSet());

        assertThat(places).hasSize(1);
    }

    /** Distance of the decimal point, or of where it would stand, from the cell's right edge. */
    private int placeOfPoint(NumberCells cells, double value) {
        JTable any = table.table();
        cells.getTableCellRendererComponent(any, value, false, false, 0, 0);
        FontMetrics metrics = cells.getFontMetrics(cells.getFont());
        String text = cells.getText();
        int point = text.indexOf('.');
        return cells.getInsets().right + (point < 0 ? 0 : metrics.stringWidth(text.substring(point)));
    }

    private boolean type(int row, int column, String text) {
        return Shots.onEventThread(() -> {
            JTable cells = table.table();
            cells.editCellAt(row, column);
            ((JTextField) cells.getEditorComponent()).setText(text);
            return cells.getCellEditor().stopCellEditing();
        });
    }
}
