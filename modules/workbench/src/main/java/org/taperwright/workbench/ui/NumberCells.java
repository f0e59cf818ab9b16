package org.taperwright.workbench.ui;

import java.awt.Component;
import java.awt.FontMetrics;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;

/**
 * Numbers in a table column, aligned on the decimal point; the unit stands in the column's header. An absent number
 * shows as a dash.
 */
public final class NumberCells extends DefaultTableCellRenderer {
    private final transient DoubleFunction<String> words;
    private final int decimals;

    /**
     * @param words how a number is written, without unit
     * @param decimals most decimals that {@code words} writes: room kept right of the decimal point
     */
    public NumberCells(DoubleFunction<String> words, int decimals) {
        this.words = words;
        this.decimals = decimals;
        setHorizontalAlignment(SwingConstants.RIGHT);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        String text = text(value);
        super.getTableCellRendererComponent(table, text, selected, focused, row, column);
        setBorder(BorderFactory.createEmptyBorder(0, Spacing.TIGHT, 0, Spacing.NEAR + room(text)));
        return this;
    }

    private String text(Object value) {
        if (value instanceof Number number) {
            return words.apply(number.doubleValue());
        }
        if (value instanceof OptionalDouble optional && optional.isPresent()) {
            return words.apply(optional.getAsDouble());
        }
        return value instanceof String written && !written.isEmpty() ? written : "\u2013";
    }

    /** Space to leave right of a text so that its decimal point stands under the others'. */
    private int room(String text) {
        if (decimals == 0) {
            return 0;
        }
        FontMetrics metrics = getFontMetrics(getFont());
        int most = metrics.stringWidth("." + "0".repeat(decimals));
        int point = text.indexOf('.');
        int used = point < 0 ? 0 : metrics.stringWidth(text.substring(point));
        return Math.max(0, most - used);
    }
}
