package org.taperwright.catalogue.ui;

import java.util.List;
import javax.swing.table.AbstractTableModel;

/** The library's instruments as a table, one row each, in no order of their own: {@link InstrumentSorter} orders them. */
final class InstrumentTableModel extends AbstractTableModel {
    private static final InstrumentColumn[] COLUMNS = InstrumentColumn.values();

    private List<InstrumentRow> rows = List.of();

    /** Shows rows. */
    void show(List<InstrumentRow> newRows) {
        rows = List.copyOf(newRows);
        fireTableDataChanged();
    }

    /** The rows shown. */
    List<InstrumentRow> rows() {
        return rows;
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return COLUMNS.length;
    }

    @Override
    public String getColumnName(int column) {
        return COLUMNS[column].title();
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return COLUMNS[column].numeric() ? Number.class : String.class;
    }

    @Override
    public Object getValueAt(int row, int column) {
        return COLUMNS[column].value(rows.get(row));
    }
}
