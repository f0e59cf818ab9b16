package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.KeyboardFocusManager;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;

/** A short table of quantities, edited in place, with buttons beneath that act on the chosen row. */
public final class NumberTable extends JPanel {
    private static final int ROWS_SHOWN = 4;

    private final transient List<Column> columns;
    private final Rows model;
    private final JTable table;
    private final JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Spacing.TIGHT, 0));
    private final Prose fault = new Prose("", Ink::fault, true);
    private transient List<List<Double>> rows = List.of();
    private transient Listener listener = (row, column, value) -> {};

    /**
     * A column.
     *
     * @param header what it holds, with the unit
     * @param kind how it is entered
     * @param editable whether a person enters it, or it follows from the others
     */
    public record Column(String header, QuantityKind kind, boolean editable) {}

    /** Receives values that a person entered. */
    @FunctionalInterface
    public interface Listener {
        /** A value entered in a cell. */
        void entered(int row, int column, double value);
    }

    /** Does something to a row. */
    @FunctionalInterface
    public interface RowAction {
        /** Acts on the row, counted from 0. */
        void on(int row);
    }

    public NumberTable(String name, String what, List<Column> columns) {
        super(new BorderLayout(0, Spacing.TIGHT));
        this.columns = List.copyOf(columns);
        model = new Rows();
        table = new JTable(model);
        setName(name);
        setOpaque(false);
        table.setName(name + ".table");
        table.getAccessibleContext().setAccessibleName(what);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.putClientProperty("terminateEditOnFocusLost", Boolean.TRUE);
        table.getTableHeader().setReorderingAllowed(false);
        leaveByTab();
        fault.setName(name + ".fault");
        fault.setVisible(false);
        buttons.setOpaque(false);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        JPanel below = new JPanel(new BorderLayout(0, Spacing.TIGHT));
        below.setOpaque(false);
        below.add(fault, BorderLayout.NORTH);
        below.add(buttons, BorderLayout.SOUTH);
        add(scroll, BorderLayout.CENTER);
        add(below, BorderLayout.SOUTH);
        dressColumns();
    }

    /** Receives what a person enters. */
    public NumberTable onEntered(Listener receiver) {
        listener = receiver;
        return this;
    }

    /** Adds a button that acts on the chosen row, or on the last when none is chosen. */
    public NumberTable button(String words, String explanation, RowAction action) {
        JButton button = new JButton(words);
        button.setName(
                getName() + "." + words.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
        button.setToolTipText(explanation);
        button.addActionListener(event -> {
            if (!rows.isEmpty()) {
                action.on(chosen());
            }
        });
        buttons.add(button);
        return this;
    }

    /** Shows these rows, keeping the chosen one. */
    public void setRows(List<List<Double>> shown) {
        if (shown.equals(rows)) {
            return;
        }
        int chosen = table.getSelectedRow();
        boolean sameCount = shown.size() == rows.size();
        rows = List.copyOf(shown);
        if (sameCount) {
            model.fireTableRowsUpdated(0, Math.max(0, rows.size() - 1));
        } else {
            model.fireTableDataChanged();
            fit();
        }
        if (chosen >= 0 && !rows.isEmpty()) {
            int row = Math.min(chosen, rows.size() - 1);
            table.setRowSelectionInterval(row, row);
        }
    }

    /** The table itself, for tests and focus. */
    public JTable table() {
        return table;
    }

    /** Tab goes on to the next field, as everywhere in a form; arrows go from cell to cell. */
    private void leaveByTab() {
        table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("TAB"), "none");
        table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("shift TAB"), "none");
    }

    private int chosen() {
        int row = table.getSelectedRow();
        return row < 0 ? rows.size() - 1 : row;
    }

    private void fit() {
        int shown = Math.max(1, Math.min(ROWS_SHOWN, rows.size()));
        int width = table.getPreferredSize().width;
        table.setPreferredScrollableViewportSize(new Dimension(width, shown * table.getRowHeight() + 2));
        revalidate();
    }

    private void dressColumns() {
        for (int i = 0; i < columns.size(); i++) {
            QuantityKind kind = columns.get(i).kind();
            TableColumn column = table.getColumnModel().getColumn(i);
            column.setCellRenderer(new NumberCells(kind::number, Math.min(3, kind.mostDecimals())));
            column.setCellEditor(new QuantityCell(kind, this::show));
        }
        table.getTableHeader().setDefaultRenderer(new RightHeader(table));
        fit();
    }

    private void show(String message) {
        fault.setText(message);
        fault.setVisible(!message.isEmpty());
        revalidate();
    }

    /** Headers over numbers stand right, as the numbers do. */
    private static final class RightHeader implements javax.swing.table.TableCellRenderer {
        private final JTable of;

        RightHeader(JTable of) {
            this.of = of;
        }

        @Override
        public java.awt.Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            DefaultTableCellRenderer header = new javax.swing.table.DefaultTableCellRenderer();
            header.getTableCellRendererComponent(of, twoLines(String.valueOf(value)), false, false, row, column);
            header.setFont(table.getTableHeader().getFont());
            header.setForeground(table.getTableHeader().getForeground());
            header.setBackground(table.getTableHeader().getBackground());
            header.setHorizontalAlignment(SwingConstants.RIGHT);
            header.setBorder(Spacing.around(Spacing.TIGHT, Spacing.NEAR));
            header.setToolTipText(String.valueOf(value));
            return header;
        }

        /** The unit goes to a second line, so that narrow columns need no abbreviation. */
        private static String twoLines(String heading) {
            int unit = heading.indexOf(" (");
            return unit < 0
                    ? heading
                    : "<html><div align='right'>" + heading.substring(0, unit) + "<br>" + heading.substring(unit + 1)
                            + "</div></html>";
        }
    }

    private final class Rows extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return rows.size();
        }

        @Override
        public int getColumnCount() {
            return columns.size();
        }

        @Override
        public String getColumnName(int column) {
            return columns.get(column).header();
        }

        @Override
        public Object getValueAt(int row, int column) {
            return rows.get(row).get(column);
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return columns.get(column).editable();
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            double entered = ((Number) value).doubleValue();
            if (row < rows.size() && entered != rows.get(row).get(column)) {
                listener.entered(row, column, entered);
            }
        }
    }
}
