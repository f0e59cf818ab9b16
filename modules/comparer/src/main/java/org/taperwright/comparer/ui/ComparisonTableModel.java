package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.quantity.Shown;

/**
 * The comparison as a table: a row for each metric beneath its group's heading; the first column
 * names it, then comes one for each design. Follows from what the metrics declare.
 */
final class ComparisonTableModel extends AbstractTableModel {
    /** Columns before the first design. */
    static final int LEADING = 1;

    private Optional<Compared> compared = Optional.empty();
    private List<TableRow> rows = List.of();
    private List<List<CellText>> cells = List.of();
    private RatioScale scale = new RatioScale(2);
    private TableView view = TableView.USUAL;

    /** Shows a result. */
    void show(Compared newCompared) {
        int columnsBefore = getColumnCount();
        compared = Optional.of(newCompared);
        Optional<Comparison> table = newCompared.comparison();
        rows = TableRows.of(newCompared, view);
        scale = table.map(RatioScale::of).orElse(new RatioScale(2));
        cells = rows.stream().map(row -> texts(newCompared, row)).toList();
        if (columnsBefore == getColumnCount()) {
            fireTableDataChanged();
        } else {
            fireTableStructureChanged();
        }
    }

    /** Lays the rows out in another way. */
    void setView(TableView newView) {
        if (!newView.equals(view)) {
            view = newView;
            compared.ifPresent(this::show);
        }
    }

    /** What is shown. */
    Optional<Compared> compared() {
        return compared;
    }

    /** The row at an index. */
    TableRow row(int index) {
        return rows.get(index);
    }

    /** The metric of a row, absent for a heading. */
    Optional<Metric> metric(int index) {
        return row(index) instanceof TableRow.MetricLine line
                ? Optional.of(line.row().metric())
                : Optional.empty();
    }

    /** The texts of all cells. */
    List<CellText> texts() {
        return cells.stream().flatMap(List::stream).toList();
    }

    /** The ratios of a row that have a band, in words. */
    String ratios(int row) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < cells.get(row).size(); i++) {
            CellText cell = cells.get(row).get(i);
            String name = getColumnName(LEADING + i);
            cell.ratioBand()
                    .ifPresent(band -> words.add(name + " " + cell.ratioWords() + " [" + Shown.band(band) + "]"));
        }
        return String.join("; ", words);
    }

    /** The scale of the bars. */
    RatioScale scale() {
        return scale;
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return LEADING + compared.map(c -> c.members().size()).orElse(0);
    }

    @Override
    public String getColumnName(int column) {
        return column < LEADING
                ? "Metric"
                : compared.orElseThrow().members().get(column - LEADING).name();
    }

    @Override
    public Object getValueAt(int row, int column) {
        if (rows.get(row) instanceof TableRow.MetricLine line) {
            return column < LEADING
                    ? line.row().metric().label()
                    : cells.get(row).get(column - LEADING);
        }
        if (rows.get(row) instanceof TableRow.DefinitionLine line) {
            return column < LEADING ? line.row().label() : line.row().values().get(column - LEADING);
        }
        return column == 0 ? ((TableRow.GroupHeading) rows.get(row)).label() : "";
    }

    /** Which way a metric is wanted, in a word; empty when neither is. */
    static String wanted(Metric metric) {
        return switch (metric.direction()) {
            case MORE -> "more";
            case LESS -> "less";
            case NEITHER -> "";
        };
    }

    private static List<CellText> texts(Compared compared, TableRow row) {
        List<CellText> texts = new ArrayList<>();
        if (row instanceof TableRow.MetricLine line) {
            Optional<Integer> datum = compared.datumMember();
            for (int i = 0; i < compared.members().size(); i++) {
                boolean isDatum = datum.equals(Optional.of(i));
                texts.add(compared.column(i)
                        .map(column -> CellText.of(line.row().cells().get(column), isDatum, datum.isPresent()))
                        .orElse(CellText.NONE));
            }
        }
        return texts;
    }
}
