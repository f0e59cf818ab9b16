package org.taperwright.comparer.ui;

import java.awt.FontMetrics;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableColumnModel;
import org.jspecify.annotations.Nullable;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.comparison.score.Contribution;
import org.taperwright.mechanics.comparison.score.Score;
import org.taperwright.mechanics.comparison.score.ScoreBoard;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.workbench.ui.Spacing;

/** What every score is made of: each metric's contribution by design, the sum, and the sum as one ratio with its band. */
final class ScoreTable extends JTable {
    private static final int NARROW = 36;
    private static final int LEAST_LABEL = 130;
    private static final String NONE = "–";

    private final transient List<Metric> counted = new ArrayList<>();
    private transient List<Score> scores = List.of();

    ScoreTable() {
        setName("comparison.score.table");
        getAccessibleContext().setAccessibleName("What each design's score is made of");
        setShowGrid(false);
        setFillsViewportHeight(true);
        setTableHeader(new NamedHeader(getColumnModel()));
        getTableHeader().setReorderingAllowed(false);
        DefaultTableCellRenderer right = new DefaultTableCellRenderer();
        right.setHorizontalAlignment(SwingConstants.TRAILING);
        setDefaultRenderer(Object.class, right);
        clear();
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return false;
    }

    /** The 5 to 95 % of a contribution. */
    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        int row = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint()) - 2;
        if (row >= 0 && column == -2) {
            return String.valueOf(getValueAt(row, 0));
        }
        if (row < 0 || row >= counted.size() || column < 0 || column >= scores.size()) {
            return super.getToolTipText(event);
        }
        Metric metric = counted.get(row);
        return scores.get(column).contributions().stream()
                .filter(each -> each.metric().equals(metric))
                .flatMap(each -> each.band().stream())
                .map(band -> metric.label() + ", 5 to 95 %: " + Shown.band(band))
                .findFirst()
                .orElse(null);
    }

    void clear() {
        counted.clear();
        scores = List.of();
        setModel(new DefaultTableModel());
    }

    /** Shows scores under the designs' names. */
    void show(ScoreBoard board, List<String> names) {
        counted.clear();
        scores = board.scores();
        List<String> heads = new ArrayList<>(List.of("Contribution", "Weight"));
        heads.addAll(names);
        DefaultTableModel model = new DefaultTableModel(heads.toArray(), 0);
        for (Metric metric : Metrics.all()) {
            double weight = board.weights().of(metric.id());
            if (weight > 0 && !board.idle().contains(metric.id())) {
                counted.add(metric);
                model.addRow(row(metric.label(), Shown.number(weight), board, score -> contribution(score, metric)));
            }
        }
        model.addRow(row(
                "Sum",
                "",
                board,
                score -> score.total().isPresent() ? Shown.number(score.total().getAsDouble(), 2, 2) : NONE));
        model.addRow(row(
                "As one ratio",
                "",
                board,
                score -> score.meanRatio().isPresent()
                        ? "× " + Shown.number(score.meanRatio().getAsDouble(), 2, 2)
                        : NONE));
        model.addRow(row("Ratio, 5 %", "", board, score -> edge(score, Band::low)));
        model.addRow(row("Ratio, 95 %", "", board, score -> edge(score, Band::high)));
        setModel(model);
        DefaultTableCellRenderer left = new DefaultTableCellRenderer();
        getColumnModel().getColumn(0).setCellRenderer(left);
        for (int column = 0; column < getColumnCount(); column++) {
            int width = width(column);
            getColumnModel().getColumn(column).setMinWidth(column == 0 ? Math.min(LEAST_LABEL, width) : width);
            getColumnModel().getColumn(column).setPreferredWidth(width);
        }
    }

    /** Wide enough for everything in a column; a design's name above may be cut, there is a tooltip. */
    private int width(int column) {
        FontMetrics metrics = getFontMetrics(getFont());
        int width = column < 2 ? metrics.stringWidth(getColumnName(column)) : NARROW;
        for (int row = 0; row < getRowCount(); row++) {
            width = Math.max(width, metrics.stringWidth(String.valueOf(getValueAt(row, column))));
        }
        return width + Spacing.NEAR + Spacing.TIGHT;
    }

    /** Narrower than all columns need, the table scrolls sideways rather than cut its numbers. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getParent().getWidth() >= getMinimumSize().width;
    }

    private static String edge(Score score, ToDoubleFunction<Band> which) {
        return score.meanRatioBand()
                .map(band -> "× " + Shown.number(which.applyAsDouble(band), 2, 2))
                .orElse(NONE);
    }

    private static Object[] row(String label, String weight, ScoreBoard board, Function<Score, String> cell) {
        List<String> cells = new ArrayList<>(List.of(label, weight));
        board.scores().forEach(score -> cells.add(cell.apply(score)));
        return cells.toArray();
    }

    private static String contribution(Score score, Metric metric) {
        return score.contributions().stream()
                .filter(each -> each.metric().equals(metric))
                .map(Contribution::value)
                .map(value -> (value > 0 ? "+" : "") + Shown.number(value, 2, 2))
                .findFirst()
                .orElse(NONE);
    }

    /** Tells a cut name whole. */
    private static final class NamedHeader extends JTableHeader {
        NamedHeader(TableColumnModel columns) {
            super(columns);
        }

        @Override
        public @Nullable String getToolTipText(MouseEvent event) {
            int column = columnAtPoint(event.getPoint());
            return column < 0 ? null : getTable().getColumnName(column);
        }
    }
}
