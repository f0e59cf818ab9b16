package org.taperwright.sequencer.ui.outcome;

import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import org.taperwright.sequencer.outcome.OutcomeCell;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/** Draws a number aligned on its decimal point and its band beneath it, smaller. */
final class BandedCellRenderer extends JPanel implements TableCellRenderer {
    /** Room right of the decimal point. */
    private static final String DECIMALS = ".0000";

    private static final int INSET = 6;

    private transient OutcomeCell cell = OutcomeCell.of(0);
    private boolean blank;
    private boolean selected;

    BandedCellRenderer() {
        setOpaque(true);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean focused, int row, int column) {
        cell = (OutcomeCell) value;
        selected = isSelected;
        OutcomeTable outcome = (OutcomeTable) table;
        blank = !outcome.row(row).tells(OutcomeTableModel.outcome(table.convertColumnIndexToModel(column)));
        setFont(
                outcome.row(row).place().isEmpty() && outcome.row(row).principal()
                        ? table.getFont().deriveFont(Font.BOLD)
                        : table.getFont());
        setBackground(isSelected ? table.getSelectionBackground() : table.getBackground());
        setForeground(isSelected ? table.getSelectionForeground() : table.getForeground());
        setEnabled(table.isEnabled());
        getAccessibleContext().setAccessibleName(blank ? "" : table.getColumnName(column) + ": " + cell);
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        FontMetrics metrics = getFontMetrics(getFont());
        FontMetrics small = getFontMetrics(Ink.smallFont());
        int width = Math.max(
                metrics.stringWidth(whole()) + metrics.stringWidth(DECIMALS), small.stringWidth(cell.bandWords()));
        return new Dimension(
                width + Spacing.NEAR + Spacing.TIGHT, metrics.getHeight() + small.getHeight() + Spacing.TIGHT);
    }

    private String whole() {
        int point = cell.valueWords().indexOf('.');
        return point < 0 ? cell.valueWords() : cell.valueWords().substring(0, point);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setColor(getBackground());
        g.fillRect(0, 0, getWidth(), getHeight());
        if (!blank) {
            draw(g);
        }
        g.dispose();
    }

    private void draw(Graphics2D g) {
        FontMetrics metrics = g.getFontMetrics(getFont());
        FontMetrics small = g.getFontMetrics(Ink.smallFont());
        int baseline = 2 + metrics.getAscent();
        int point = getWidth() - INSET - metrics.stringWidth(DECIMALS);
        g.setFont(getFont());
        g.setColor(isEnabled() && !cell.awaited() ? getForeground() : faint());
        g.drawString(cell.valueWords(), point - metrics.stringWidth(whole()), baseline);
        g.setFont(Ink.smallFont());
        g.setColor(selected ? getForeground() : isEnabled() ? Ink.quiet() : faint());
        String band = cell.bandWords();
        g.drawString(
                band,
                getWidth() - INSET - small.stringWidth(band),
                baseline + metrics.getDescent() + small.getAscent());
    }

    private Color faint() {
        return Ink.mix(getForeground(), getBackground(), 0.45);
    }
}
