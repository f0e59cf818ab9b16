package org.taperwright.comparer.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/**
 * Draws a value, aligned on the decimal point, its band beneath where it has one, and to its right the ratio to the
 * datum as a bar about 1 with the ratio written beside it.
 */
final class MetricCellRenderer extends JComponent implements TableCellRenderer {
    private static final int LEAST_BAR = 24;
    private static final double BAR_HEIGHT = 8;

    private final transient ComparisonTableModel model;
    private transient CellText cell = CellText.NONE;
    private transient SeriesLook look = new SeriesLook(0);
    private boolean selected;

    MetricCellRenderer(ComparisonTableModel model) {
        this.model = model;
        setOpaque(true);
    }

    /** Width in which every part of a cell finds room. */
    static int roomyWidth(FontMetrics metrics) {
        return metrics.stringWidth("00000.000") + metrics.stringWidth("× 0.000") + 72 + 4 * Spacing.NEAR;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean focused, int row, int column) {
        cell = (CellText) value;
        look = ((ComparisonTable) table).look(column - ComparisonTableModel.LEADING);
        selected = isSelected;
        setFont(table.getFont());
        setBackground(isSelected ? table.getSelectionBackground() : table.getBackground());
        setForeground(isSelected ? table.getSelectionForeground() : table.getForeground());
        setEnabled(table.isEnabled());
        setToolTipText(cell.toString());
        getAccessibleContext().setAccessibleName(table.getColumnName(column) + ": " + cell);
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        FontMetrics metrics = getFontMetrics(getFont());
        int lines = cell.band().isEmpty() ? 1 : 2;
        return new Dimension(roomyWidth(metrics), lines * metrics.getHeight() + Spacing.NEAR);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(getBackground());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setFont(getFont());
        g.setColor(isEnabled() ? getForeground() : Ink.mix(getForeground(), getBackground(), 0.5));
        FontMetrics metrics = g.getFontMetrics();
        int valueEnd = Spacing.NEAR + metrics.stringWidth("00000.000");
        int ratioStart = getWidth() - Spacing.NEAR - metrics.stringWidth("× 0.000");
        int baseline = (cell.band().isEmpty() ? (getHeight() - metrics.getHeight()) / 2 : Spacing.TIGHT)
                + metrics.getAscent();
        int point = Spacing.NEAR + metrics.stringWidth("00000");
        g.drawString(cell.whole(), point - metrics.stringWidth(cell.whole()), baseline);
        g.drawString(cell.fraction(), point, baseline);
        g.drawString(cell.ratioWords(), ratioStart, baseline);
        if (!cell.band().isEmpty()) {
            g.setFont(Ink.smallFont());
            g.drawString(cell.band(), Spacing.NEAR, baseline + metrics.getHeight());
        }
        int barStart = valueEnd + Spacing.NEAR;
        int barWidth = ratioStart - Spacing.NEAR - barStart;
        if (cell.ratio().isPresent() && barWidth >= LEAST_BAR) {
            bar(g, barStart, barWidth, baseline - metrics.getAscent() / 2.6, cell.ratio().getAsDouble());
        }
        g.dispose();
    }

    private void bar(Graphics2D g, double x, double width, double middle, double ratio) {
        double zero = x + width / 2;
        double end = zero + width / 2 * model.scale().place(ratio);
        double top = middle - BAR_HEIGHT / 2;
        g.setColor(selected ? getForeground() : Ink.mix(look.colour(), getBackground(), isEnabled() ? 0 : 0.6));
        g.fill(new Rectangle2D.Double(Math.min(zero, end), top, Math.abs(end - zero), BAR_HEIGHT));
        g.setColor(getForeground());
        g.draw(new Line2D.Double(zero, top - 3, zero, top + BAR_HEIGHT + 3));
    }
}
