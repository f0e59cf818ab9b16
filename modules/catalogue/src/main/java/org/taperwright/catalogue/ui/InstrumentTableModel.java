package org.taperwright.catalogue.ui;

import javax.swing.table.AbstractTableModel;

/** The library's instruments as a table, one row each, in no order of their own: {@link InstrumentSorter} orders them. */
final class InstrumentTableModel extends AbstractTableModel {
    private static final InstrumentColumn[] COLUMNS = InstrumentColumn.values();

    private transient InstrumentList list = InstrumentList.NOTHING;

    /** Shows a list. */
    void show(InstrumentList shown) {
        list = shown;
        fireTableDataChanged();
    }

    /** The list shown. */
    InstrumentList list() {
        return list;
    }

    @Override
    public int getRowCount() {
        return list.rows().size();
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
        return COLUMNS[column].value(list.rows().get(row));
    }
}
