package org.taperwright.workbench.ui;

import java.util.List;
import javax.swing.table.AbstractTableModel;

/** A table of texts that is only read. */
public final class TextRows extends AbstractTableModel {
    private final transient List<String> headers;
    private transient List<List<String>> rows = List.of();

    /** A table without rows yet. */
    public TextRows(List<String> headers) {
        this.headers = List.copyOf(headers);
    }

    /** Shows other rows. */
    public void show(List<List<String>> shown) {
        rows = List.copyOf(shown);
        fireTableDataChanged();
    }

    /** What is shown, for the clipboard and files. */
    public DataTable data() {
        return new DataTable(headers, rows);
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return headers.size();
    }

    @Override
    public String getColumnName(int column) {
        return headers.get(column);
    }

    @Override
    public Object getValueAt(int row, int column) {
        return rows.get(row).get(column);
    }
}
