package org.taperwright.comparer.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/**
 * Draws a value, aligned on the decimal point, with the ratio to the datum beside it in words and beneath it as a bar
 * about 1, with a line from 5 to 95 % of the ratio through the bar's end; the value's band, where there is one, in a third
 * line, with that of the ratio in words beside it where there is room.
 */
final class MetricCellRenderer extends JPanel implements TableCellRenderer {
    private static final double BAR_HEIGHT = 7;
    private static final double MARK = 3;
    private static final int LEAST_WIDTH = 112;

    private final transient ComparisonTableModel model;
    private transient CellText cell = CellText.NONE;
    private transient SeriesLook look = new SeriesLook(0);
    private boolean selected;
    private int wholeWidth;

    MetricCellRenderer(ComparisonTableModel model) {
        this.model = model;
        setOpaque(true);
    }

    /** Measures the texts of all cells, so that each part of every cell finds room; gives the width of a cell. */
    int measure(Font font) {
        FontMetrics metrics = getFontMetrics(font);
        FontMetrics small = getFontMetrics(Ink.smallFont());
        wholeWidth = metrics.stringWidth("00");
        int fractionWidth = metrics.stringWidth(".00");
        int wordsWidth = small.stringWidth("datum");
        int leastWidth = LEAST_WIDTH;
        for (CellText text : model.texts()) {
            wholeWidth = Math.max(wholeWidth, metrics.stringWidth(text.whole()));
            fractionWidth = Math.max(fractionWidth, metrics.stringWidth(text.fraction()));
            if (beside(text)) {
                wordsWidth = Math.max(wordsWidth, small.stringWidth(text.ratioWords()));
            }
            leastWidth = Math.max(leastWidth, small.stringWidth(text.band()) + 2 * Spacing.NEAR);
            if (!beside(text)) {
                leastWidth = Math.max(leastWidth, small.stringWidth(text.ratioWords()) + 2 * Spacing.NEAR);
            }
        }
        return Math.max(leastWidth, wholeWidth + fractionWidth + wordsWidth + 3 * Spacing.NEAR);
    }

    /** Whether the words stand beside the value; a difference stands beneath it, where there is no bar. */
    private static boolean beside(CellText text) {
        return text.ratio().isPresent() || !text.ratioWords().startsWith("Δ");
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
        getAccessibleContext().setAccessibleName(table.getColumnName(column) + ": " + cell);
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        FontMetrics metrics = getFontMetrics(getFont());
        FontMetrics small = getFontMetrics(Ink.smallFont());
        int lines = metrics.getHeight() + small.getHeight() * (cell.band().isEmpty() ? 1 : 2);
        return new Dimension(LEAST_WIDTH, lines + Spacing.NEAR);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(getBackground());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setFont(getFont());
        g.setColor(ink());
        FontMetrics metrics = g.getFontMetrics();
        int baseline = Spacing.TIGHT + metrics.getAscent();
        int point = Spacing.NEAR + wholeWidth;
        g.drawString(cell.whole(), point - metrics.stringWidth(cell.whole()), baseline);
        g.drawString(cell.fraction(), point, baseline);
        FontMetrics small = g.getFontMetrics(Ink.smallFont());
        g.setFont(Ink.smallFont());
        g.drawString(
                cell.ratioWords(),
                getWidth() - Spacing.NEAR - small.stringWidth(cell.ratioWords()),
                beside(cell) ? baseline : baseline + metrics.getHeight());
        if (cell.ratio().isPresent()) {
            bar(
                    g,
                    Spacing.TIGHT + metrics.getHeight() + small.getHeight() / 2.0,
                    cell.ratio().getAsDouble());
        }
        if (!cell.band().isEmpty()) {
            g.setFont(Ink.smallFont());
            g.setColor(selected ? getForeground() : Ink.quiet());
            int third = baseline + metrics.getDescent() + 1 + small.getHeight() + small.getAscent();
            g.drawString(cell.band(), Spacing.NEAR, third);
            String ratios =
                    cell.ratioBand().map(band -> "× " + Shown.band(band)).orElse("");
            int left = getWidth() - Spacing.NEAR - small.stringWidth(ratios);
            if (left > 2 * Spacing.NEAR + small.stringWidth(cell.band())) {
                g.drawString(ratios, left, third);
            }
        }
        g.dispose();
    }

    private java.awt.Color ink() {
        return isEnabled() ? getForeground() : Ink.mix(getForeground(), getBackground(), 0.5);
    }

    private void bar(Graphics2D g, double middle, double ratio) {
        double reach = getWidth() / 2.0 - Spacing.NEAR;
        double zero = getWidth() / 2.0;
        double end = zero + reach * model.scale().place(ratio);
        double top = middle - BAR_HEIGHT / 2;
        g.setColor(Ink.mix(getForeground(), getBackground(), 0.85));
        g.draw(new Line2D.Double(zero - reach, middle, zero + reach, middle));
        g.setColor(selected ? getForeground() : Ink.mix(look.colour(), getBackground(), isEnabled() ? 0 : 0.6));
        g.fill(new Rectangle2D.Double(Math.min(zero, end), top, Math.abs(end - zero), BAR_HEIGHT));
        if (model.scale().beyond(ratio)) {
            double ahead = Math.copySign(Spacing.TIGHT, end - zero);
            Path2D further = new Path2D.Double();
            further.moveTo(end, top);
            further.lineTo(end + ahead, middle);
            further.lineTo(end, top + BAR_HEIGHT);
            g.fill(further);
        }
        cell.ratioBand().ifPresent(band -> whisker(g, middle, zero, reach, band));
        g.setColor(ink());
        g.draw(new Line2D.Double(zero, top - MARK, zero, top + BAR_HEIGHT + MARK));
    }

    /** A line over the ratio's band, with a stroke across each end that the scale reaches. */
    private void whisker(Graphics2D g, double middle, double zero, double reach, Band band) {
        double low = zero + reach * model.scale().place(band.low());
        double high = zero + reach * model.scale().place(band.high());
        g.setColor(ink());
        g.draw(new Line2D.Double(low, middle, high, middle));
        for (double ratio : new double[] {band.low(), band.high()}) {
            double at = zero + reach * model.scale().place(ratio);
            if (!model.scale().beyond(ratio)) {
                g.draw(new Line2D.Double(at, middle - MARK, at, middle + MARK));
            }
        }
    }
}
