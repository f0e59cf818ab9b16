package org.taperwright.designer.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.DataTable;
import org.taperwright.workbench.ui.Heading;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.NumberCells;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.StandingMark;

/** The design's numbers: one row for each metric there is, with unit and standing, explained on hovering. */
final class NumbersPane extends JPanel {
    private static final List<String> HEADERS = List.of("Measure", "Value", "Unit", "Standing");
    private static final int VALUE = 1;
    private static final int DECIMALS = 4;
    private static final int[] WIDTHS = {128, 78, 50, 74};

    private final Rows model = new Rows();
    private final Heading heading = new Heading("Numbers");
    private transient List<Metric> metrics = Metrics.all();
    private transient List<Reading> readings = List.of();
    private boolean outdated;

    NumbersPane() {
        super(new BorderLayout(0, Spacing.TIGHT));
        setName("design.numbers");
        setOpaque(false);
        JTable table = new NumbersTable();
        table.setName("design.numbers.table");
        table.getAccessibleContext().setAccessibleName("Numbers of the design");
        table.setSelectionMode(ListSelectionModel.SINGLE_INTERVAL_SELECTION);
        table.setShowGrid(false);
        table.getTableHeader().setReorderingAllowed(false);
        for (int i = 0; i < WIDTHS.length; i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(WIDTHS[i]);
            table.getColumnModel().getColumn(i).setMinWidth(i == 0 ? WIDTHS[i] / 2 : WIDTHS[i]);
            table.getColumnModel().getColumn(i).setCellRenderer(new Words());
        }
        table.getColumnModel().getColumn(VALUE).setCellRenderer(new Figures());
        CopyMenu.on(table, "Numbers", this::data);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        add(heading, BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
    }

    /** Shows what each metric reads, in the metrics' order; outdated readings are marked. */
    void show(List<Reading> shown, boolean old) {
        readings = shown;
        outdated = old;
        heading.setText(old && !shown.isEmpty() ? "Numbers (outdated)" : "Numbers");
        model.fireTableDataChanged();
    }

    private DataTable data() {
        List<List<String>> rows = new ArrayList<>();
        for (int row = 0; row < model.getRowCount(); row++) {
            rows.add(List.of(cell(row, 0), cell(row, 1), cell(row, 2), cell(row, 3)));
        }
        return new DataTable(HEADERS, rows);
    }

    private String cell(int row, int column) {
        return String.valueOf(model.getValueAt(row, column));
    }

    /** Rows explain themselves on hovering. */
    private final class NumbersTable extends JTable {
        NumbersTable() {
            super(model);
        }

        @Override
        public String getToolTipText(java.awt.event.MouseEvent event) {
            int row = rowAtPoint(event.getPoint());
            if (row < 0) {
                return null;
            }
            Metric metric = metrics.get(row);
            String band = readings.get(row)
                    .band()
                    .map(b -> "5 to 95 %: " + Shown.number(b.low()) + " to " + Shown.number(b.high()) + " "
                            + metric.unit() + "<br>")
                    .orElse("");
            return "<html><div style='width:300px'><b>" + metric.label() + "</b><br>" + band + metric.explanation()
                    + "<br>"
                    + StandingMark.explanation(metric.standing()) + "<br>Source: " + metric.source() + "</div></html>";
        }
    }

    private final class Words extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            setForeground(outdated ? Ink.quiet() : null);
            return super.getTableCellRendererComponent(table, value, selected, focused, row, column);
        }
    }

    private final class Figures implements javax.swing.table.TableCellRenderer {
        private final NumberCells cells = new NumberCells(Shown::number, DECIMALS);

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            cells.setForeground(outdated ? Ink.quiet() : null);
            return cells.getTableCellRendererComponent(table, value, selected, focused, row, column);
        }
    }

    private final class Rows extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return readings == null ? 0 : readings.size();
        }

        @Override
        public int getColumnCount() {
            return HEADERS.size();
        }

        @Override
        public String getColumnName(int column) {
            return HEADERS.get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            Metric metric = metrics.get(row);
            return switch (column) {
                case 0 -> metric.label();
                case VALUE -> readings.get(row).value();
                case 2 -> metric.unit();
                default -> metric.standing().word();
            };
        }
    }
}
