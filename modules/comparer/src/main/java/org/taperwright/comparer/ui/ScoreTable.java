package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.comparison.score.Contribution;
import org.taperwright.mechanics.comparison.score.Score;
import org.taperwright.mechanics.comparison.score.ScoreBoard;
import org.taperwright.mechanics.quantity.Shown;

/** What every score is made of: each metric's contribution by design, the sum, and the sum as one ratio with its band. */
final class ScoreTable extends JTable {
    private static final String NONE = "–";

    ScoreTable() {
        setName("comparison.score.table");
        getAccessibleContext().setAccessibleName("What each design's score is made of");
        setShowGrid(false);
        setFillsViewportHeight(true);
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

    void clear() {
        setModel(new DefaultTableModel());
    }

    /** Shows scores under the designs' names. */
    void show(ScoreBoard board, List<String> names) {
        List<String> heads = new ArrayList<>(List.of("Contribution", "Weight"));
        heads.addAll(names);
        DefaultTableModel model = new DefaultTableModel(heads.toArray(), 0);
        for (Metric metric : Metrics.all()) {
            double weight = board.weights().of(metric.id());
            if (weight > 0 && !board.idle().contains(metric.id())) {
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
        model.addRow(row(
                "5 to 95 %",
                "", board, score -> score.meanRatioBand().map(Shown::band).orElse(NONE)));
        setModel(model);
        DefaultTableCellRenderer left = new DefaultTableCellRenderer();
        getColumnModel().getColumn(0).setCellRenderer(left);
        getColumnModel().getColumn(0).setPreferredWidth(130);
        getColumnModel().getColumn(1).setPreferredWidth(45);
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
}
