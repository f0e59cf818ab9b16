package org.taperwright.sequencer.ui.outcome;

import java.util.List;
import javax.swing.table.AbstractTableModel;
import org.taperwright.sequencer.outcome.OutcomeColumn;
import org.taperwright.sequencer.outcome.OutcomeRow;

/** The outcome's lines: the first column says what a line is about, then comes one for each number. */
final class OutcomeTableModel extends AbstractTableModel {
    /** Columns before the first number. */
    static final int LEADING = 1;

    private transient List<OutcomeRow> rows = List.of();

    /** Shows other lines. */
    void show(List<OutcomeRow> shown) {
        rows = List.copyOf(shown);
        fireTableDataChanged();
    }

    /** The lines. */
    List<OutcomeRow> rows() {
        return rows;
    }

    /** What a number's column shows. */
    static OutcomeColumn outcome(int column) {
        return OutcomeColumn.values()[column - LEADING];
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return LEADING + OutcomeColumn.values().length;
    }

    @Override
    public String getColumnName(int column) {
        return column < LEADING ? "Step" : outcome(column).label();
    }

    @Override
    public Object getValueAt(int row, int column) {
        return column < LEADING ? rows.get(row) : rows.get(row).cell(outcome(column));
    }
}
