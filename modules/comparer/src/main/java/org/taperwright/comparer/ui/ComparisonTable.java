package org.taperwright.comparer.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.event.TableModelEvent;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import org.jspecify.annotations.Nullable;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.StandingMark;

/** Shows {@link ComparisonTableModel}; greyed, and disabled for assistive technology, while its numbers are outdated. */
final class ComparisonTable extends JTable {
    private final transient ComparisonTableModel metrics;
    private final transient MetricCellRenderer cells;
    private final transient MetricNameRenderer names;
    private final transient MemberHeaderRenderer heads;
    private transient List<SeriesLook> looks = List.of();
    private transient Optional<Metric> chosen = Optional.empty();

    ComparisonTable(ComparisonTableModel model) {
        super(model);
        metrics = model;
        cells = new MetricCellRenderer(model);
        names = new MetricNameRenderer(model);
        heads = new MemberHeaderRenderer(model);
        setName("comparison.table");
        getAccessibleContext().setAccessibleName("Metrics of the designs compared");
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getSelectionModel()
                .addListSelectionListener(event -> selectedMetric().ifPresent(metric -> chosen = Optional.of(metric)));
        setShowGrid(false);
        setIntercellSpacing(new Dimension(0, 0));
        setFillsViewportHeight(true);
        getTableHeader().setReorderingAllowed(false);
        if (getTableHeader().getDefaultRenderer() instanceof JLabel heading) {
            heading.setHorizontalAlignment(JLabel.LEADING);
        }
        fitColumns();
    }

    /** Gives each design its look, the same as in every figure. */
    void setLooks(List<SeriesLook> newLooks) {
        looks = List.copyOf(newLooks);
        repaint();
        getTableHeader().repaint();
    }

    /** The look of a design's column. */
    SeriesLook look(int member) {
        return member >= 0 && member < looks.size() ? looks.get(member) : new SeriesLook(0);
    }

    /** Does something on a key while the table has the focus. */
    void onKey(String stroke, Runnable action) {
        getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    /** Selects a metric's row, where it is shown. */
    void selectMetric(Metric metric) {
        for (int row = 0; row < getRowCount(); row++) {
            if (metrics.metric(row).equals(Optional.of(metric))) {
                setRowSelectionInterval(row, row);
            }
        }
    }

    /** The metric of the selected row. */
    Optional<Metric> selectedMetric() {
        return getSelectedRow() < 0 ? Optional.empty() : metrics.metric(getSelectedRow());
    }

    /** The ratios of the selected row with their bands, in words; empty where there is none. */
    String selectedRatios() {
        return getSelectedRow() < 0 ? "" : metrics.ratios(getSelectedRow());
    }

    @Override
    public void tableChanged(TableModelEvent event) {
        Optional<Metric> selected = chosen;
        super.tableChanged(event);
        if (cells != null) {
            fitColumns();
            fitRows();
            selected.ifPresent(this::selectMetric);
        }
    }

    /** A theme gives all rows one height; they get their own again, in its font. */
    @Override
    public void updateUI() {
        super.updateUI();
        if (cells != null) {
            fitColumns();
            fitRows();
        }
    }

    private void fitColumns() {
        int memberWidth = cells.measure(getFont());
        int nameWidth = memberWidth;
        for (int row = 0; row < getRowCount(); row++) {
            nameWidth = Math.max(nameWidth, prepareRenderer(names, row, 0).getPreferredSize().width);
        }
        for (int i = 0; i < getColumnCount(); i++) {
            TableColumn column = getColumnModel().getColumn(i);
            boolean member = i >= ComparisonTableModel.LEADING;
            column.setPreferredWidth(member ? memberWidth : nameWidth);
            column.setMinWidth(member ? memberWidth : nameWidth);
            if (member) {
                column.setHeaderRenderer(heads);
            } else {
                column.setHeaderValue("<html><b>Metric</b><br>unit, wanted, standing");
            }
        }
    }

    private void fitRows() {
        for (int row = 0; row < getRowCount(); row++) {
            int height = prepareRenderer(names, row, 0).getPreferredSize().height;
            if (metrics.row(row) instanceof TableRow.MetricLine && getColumnCount() > ComparisonTableModel.LEADING) {
                for (int column = ComparisonTableModel.LEADING; column < getColumnCount(); column++) {
                    height =
                            Math.max(height, prepareRenderer(cells, row, column).getPreferredSize().height);
                }
            }
            setRowHeight(row, height);
        }
    }

    /** Narrower than all columns need, the table scrolls sideways rather than squeeze them. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getParent().getWidth() >= getMinimumSize().width;
    }

    @Override
    public TableCellRenderer getCellRenderer(int row, int column) {
        if (column < ComparisonTableModel.LEADING) {
            return names;
        }
        return metrics.row(row) instanceof TableRow.MetricLine ? cells : super.getCellRenderer(row, column);
    }

    @Override
    public Component prepareRenderer(TableCellRenderer renderer, int row, int column) {
        Component component = super.prepareRenderer(renderer, row, column);
        if (metrics.row(row) instanceof TableRow.GroupHeading && !isRowSelected(row)) {
            component.setBackground(Ink.mix(getBackground(), getForeground(), 0.06));
        }
        return component;
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        int row = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint());
        if (row < 0 || column < 0) {
            return null;
        }
        if (metrics.row(row) instanceof TableRow.DefinitionLine) {
            return getColumnName(column) + ": " + getValueAt(row, column);
        }
        return metrics.metric(row).map(metric -> tip(metric, row, column)).orElse(null);
    }

    private String tip(Metric metric, int row, int column) {
        if (column >= ComparisonTableModel.LEADING) {
            return getColumnName(column) + ": " + getValueAt(row, column);
        }
        String wanted = ComparisonTableModel.wanted(metric);
        return html(metric.explanation() + " Source: " + metric.source() + ". "
                + StandingMark.explanation(metric.standing())
                + (wanted.isEmpty() ? " Neither more nor less is better by itself." : ""));
    }

    private static String html(String text) {
        return String.format(
                Locale.ROOT,
                "<html><body style='width:320px'>%s</body></html>",
                text.replace("&", "&amp;").replace("<", "&lt;"));
    }
}
