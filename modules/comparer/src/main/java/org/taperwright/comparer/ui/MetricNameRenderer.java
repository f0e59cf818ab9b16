package org.taperwright.comparer.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/** A metric's name with its unit, which way it is wanted and its standing beneath; or a group's heading. */
final class MetricNameRenderer extends JPanel implements TableCellRenderer {
    private final transient ComparisonTableModel model;
    private String name = "";
    private String beneath = "";
    private boolean selected;

    MetricNameRenderer(ComparisonTableModel model) {
        this.model = model;
        setOpaque(true);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean focused, int row, int column) {
        Optional<Metric> metric = model.metric(row);
        name = String.valueOf(value);
        beneath = metric.map(MetricNameRenderer::particulars).orElse("");
        selected = isSelected;
        setFont(model.row(row) instanceof TableRow.GroupHeading ? Ink.headingFont() : table.getFont());
        setBackground(isSelected ? table.getSelectionBackground() : table.getBackground());
        setForeground(isSelected ? table.getSelectionForeground() : table.getForeground());
        getAccessibleContext().setAccessibleName(beneath.isEmpty() ? name : name + ", " + beneath);
        return this;
    }

    private static String particulars(Metric metric) {
        return Stream.of(
                        metric.unit(),
                        ComparisonTableModel.wanted(metric),
                        metric.standing().word())
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
    }

    @Override
    public Dimension getPreferredSize() {
        FontMetrics metrics = getFontMetrics(getFont());
        FontMetrics small = getFontMetrics(Ink.smallFont());
        int width = Math.max(metrics.stringWidth(name), small.stringWidth(beneath)) + 2 * Spacing.NEAR;
        int height = metrics.getHeight() + (beneath.isEmpty() ? 0 : small.getHeight()) + Spacing.NEAR;
        return new Dimension(width, height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setColor(getBackground());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setFont(getFont());
        g.setColor(getForeground());
        FontMetrics metrics = g.getFontMetrics();
        int baseline = Spacing.TIGHT + metrics.getAscent();
        g.drawString(name, Spacing.NEAR, baseline);
        g.setFont(Ink.smallFont());
        g.setColor(selected ? getForeground() : Ink.quiet());
        g.drawString(beneath, Spacing.NEAR, baseline + g.getFontMetrics().getHeight());
        g.dispose();
    }
}
