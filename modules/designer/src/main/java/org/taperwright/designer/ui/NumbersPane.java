package org.taperwright.designer.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableColumnModel;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import javax.swing.table.TableColumnModel;
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

/**
 * The design's numbers: one row for each metric there is, with band, unit and standing, explained on hovering. Where there is
 * no room for a column of each, a row has two lines: standing and band stand beneath the value.
 */
final class NumbersPane extends JPanel {
    private static final List<String> HEADERS = List.of("Measure", "Value", "5 to 95 %", "Unit", "Standing");
    private static final int MEASURE = 0;
    private static final int VALUE = 1;
    private static final int BAND = 2;
    private static final int UNIT = 3;
    private static final int STANDING = 4;
    private static final int DECIMALS = 4;
    /** Least width for a column of each, px. */
    private static final int WIDE = 480;

    private final Rows model = new Rows();
    private final Heading heading = new Heading("Numbers");
    private transient List<Metric> metrics = Metrics.all();
    private transient List<Reading> readings = List.of();
    private boolean outdated;
    private final JTable table = new NumbersTable();
    private final int oneLine;
    private final transient TableColumnModel wide;
    private final transient TableColumnModel narrow;

    NumbersPane() {
        super(new BorderLayout(0, Spacing.TIGHT));
        setName("design.numbers");
        setOpaque(false);
        table.setName("design.numbers.table");
        table.getAccessibleContext().setAccessibleName("Numbers of the design");
        table.setSelectionMode(ListSelectionModel.SINGLE_INTERVAL_SELECTION);
        table.setShowGrid(false);
        table.setAutoCreateColumnsFromModel(false);
        table.getTableHeader().setReorderingAllowed(false);
        oneLine = table.getRowHeight();
        wide = columns(
                column(MEASURE, 150, 96, new Words()),
                column(VALUE, 78, 78, new Figures()),
                column(BAND, 136, 130, new Words()),
                column(UNIT, 62, 62, new Words()),
                column(STANDING, 70, 70, new Words()));
        narrow = columns(column(MEASURE, 124, 60, new Words()), column(VALUE, 148, 148, new ValueOverBand()));
        narrow.getColumn(1).setHeaderValue("Value, 5 to 95 %");
        arrange(0);
        CopyMenu.on(table, "Numbers", this::data);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        scroll.getViewport().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                arrange(scroll.getViewport().getWidth());
            }
        });
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

    /** Lays the columns out for a width. */
    private void arrange(int width) {
        boolean roomy = width >= WIDE;
        TableColumnModel fitting = roomy ? wide : narrow;
        if (table.getColumnModel() != fitting) {
            table.setColumnModel(fitting);
            table.setRowHeight(roomy ? oneLine : 2 * oneLine - Spacing.TIGHT);
        }
    }

    private static TableColumnModel columns(TableColumn... columns) {
        TableColumnModel model = new DefaultTableColumnModel();
        List.of(columns).forEach(model::addColumn);
        return model;
    }

    private static TableColumn column(int index, int width, int least, TableCellRenderer renderer) {
        TableColumn column = new TableColumn(index, width, renderer, null);
        column.setHeaderValue(HEADERS.get(index));
        column.setMinWidth(least);
        return column;
    }

    private DataTable data() {
        List<List<String>> rows = new ArrayList<>();
        for (int r = 0; r < model.getRowCount(); r++) {
            int row = r;
            rows.add(IntStream.range(0, HEADERS.size())
                    .mapToObj(column -> cell(row, column))
                    .toList());
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
            String band = bandWords(row);
            String ends = band.isEmpty() ? "" : "5 to 95 %: " + band + " " + metric.unit() + "<br>";
            return "<html><div style='width:300px'><b>" + metric.label() + "</b><br>" + ends + metric.explanation()
                    + "<br>"
                    + StandingMark.explanation(metric.standing()) + "<br>Source: " + metric.source() + "</div></html>";
        }
    }

    private String bandWords(int row) {
        return readings.get(row).band().map(Shown::band).orElse("");
    }

    /** Words, in as many lines as the row has room for. */
    private final class Words extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable shown, Object value, boolean selected, boolean focused, int row, int column) {
            setForeground(outdated ? Ink.quiet() : null);
            boolean lines = shown.getRowHeight() > oneLine;
            setVerticalAlignment(lines ? SwingConstants.TOP : SwingConstants.CENTER);
            return super.getTableCellRendererComponent(
                    shown, lines ? "<html>" + value : value, selected, focused, row, column);
        }
    }

    private final class Figures implements TableCellRenderer {
        private final NumberCells cells = new NumberCells(Shown::number, DECIMALS);

        @Override
        public Component getTableCellRendererComponent(
                JTable shown, Object value, boolean selected, boolean focused, int row, int column) {
            cells.setForeground(outdated ? Ink.quiet() : null);
            return cells.getTableCellRendererComponent(shown, value, selected, focused, row, column);
        }
    }

    /** The value with its unit, and beneath it the standing and the band. */
    private final class ValueOverBand extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable shown, Object number, boolean selected, boolean focused, int row, int column) {
            String value =
                    (Shown.number((Double) number) + " " + metrics.get(row).unit()).strip();
            String standing = metrics.get(row).standing().word();
            String band = bandWords(row);
            String beneath = band.isEmpty() ? standing : standing + ", " + band;
            setForeground(outdated ? Ink.quiet() : null);
            setVerticalAlignment(SwingConstants.TOP);
            super.getTableCellRendererComponent(
                    shown, "<html>" + value + "<br><small>" + beneath + "</small>", selected, focused, row, column);
            getAccessibleContext().setAccessibleName(value + ", " + beneath);
            return this;
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
                case MEASURE -> metric.label();
                case VALUE -> readings.get(row).value();
                case BAND -> bandWords(row);
                case UNIT -> metric.unit();
                default -> metric.standing().word();
            };
        }
    }
}
