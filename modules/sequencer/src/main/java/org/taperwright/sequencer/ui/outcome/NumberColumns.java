package org.taperwright.sequencer.ui.outcome;

import java.util.Set;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;
import org.taperwright.workbench.ui.NumberCells;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextTable;

/**
 * Dresses a table of texts: columns of numbers stand right, on their decimal points; headings have the unit in a line of their own; a
 * table with too little room for its columns scrolls sideways.
 */
final class NumberColumns {
    private static final int DECIMALS = 3;
    /** Least width that long words may be squeezed to, px; their tooltip says them in full. */
    private static final int MOST = 130;
    /** Likewise of the first column, which says what a line is about, px. */
    private static final int MOST_FIRST = 180;
    /** Width beyond which words are rather cut, px. */
    private static final int WANTED = 280;

    private static final int SHORT = 12;

    private NumberColumns() {}

    /** Dresses a table whose columns so counted, from 0, hold numbers. */
    static TextTable dress(TextTable table, Set<Integer> numbers) {
        for (int i = 0; i < table.getColumnCount(); i++) {
            boolean number = numbers.contains(i);
            if (number) {
                table.getColumnModel().getColumn(i).setCellRenderer(new NumberCells(Double::toString, DECIMALS));
            }
            table.getColumnModel()
                    .getColumn(i)
                    .setHeaderRenderer(
                            (of, value, selected, focused, row, column) -> heading(of, String.valueOf(value), number));
        }
        table.getTableHeader().setReorderingAllowed(false);
        table.setAutoCreateColumnsFromModel(false);
        table.getModel().addTableModelListener(event -> fit(table));
        fit(table);
        table.setRowHeight(table.getFontMetrics(table.getFont()).getHeight() + Spacing.TIGHT);
        return table;
    }

    /** Columns are as wide as what stands in them, up to a limit, and no narrower than their headings. */
    private static void fit(JTable table) {
        for (int c = 0; c < table.getColumnCount(); c++) {
            TableColumn column = table.getColumnModel().getColumn(c);
            int head = column.getHeaderRenderer()
                    .getTableCellRendererComponent(table, column.getHeaderValue(), false, false, -1, c)
                    .getPreferredSize()
                    .width;
            int widest = head;
            for (int r = 0; r < table.getRowCount(); r++) {
                widest = Math.max(
                        widest,
                        table.prepareRenderer(table.getCellRenderer(r, c), r, c).getPreferredSize().width
                                + Spacing.NEAR);
            }
            column.setMinWidth(Math.max(head, Math.min(widest, c == 0 ? MOST_FIRST : MOST)));
            column.setPreferredWidth(Math.max(head, Math.min(widest, WANTED)));
        }
    }

    /** A heading of several words in two lines, as even as may be. */
    private static String halved(String words) {
        int best = -1;
        for (int at = words.indexOf(' '); at >= 0; at = words.indexOf(' ', at + 1)) {
            boolean better = Math.abs(at - words.length() / 2) < Math.abs(best - words.length() / 2);
            best = best < 0 || better ? at : best;
        }
        return best < 0 || words.length() < SHORT
                ? words
                : words.substring(0, best) + "<br>" + words.substring(best + 1);
    }

    private static DefaultTableCellRenderer heading(JTable table, String words, boolean number) {
        DefaultTableCellRenderer label = new DefaultTableCellRenderer();
        label.getTableCellRendererComponent(table, "", false, false, -1, 0);
        int unit = words.indexOf(" (");
        String name = unit < 0 ? words : words.substring(0, unit);
        String units =
                unit < 0 ? "" : words.substring(unit + 2, words.length() - 1).replace(", ", "<br>");
        String lines = halved(name) + (units.isEmpty() ? "" : "<br>" + units);
        label.setText("<html><div align='" + (number ? "right" : "left") + "'>" + lines + "</div></html>");
        label.setHorizontalAlignment(number ? SwingConstants.TRAILING : SwingConstants.LEADING);
        label.setVerticalAlignment(SwingConstants.BOTTOM);
        label.setFont(table.getTableHeader().getFont());
        label.setForeground(table.getTableHeader().getForeground());
        label.setBackground(table.getTableHeader().getBackground());
        label.setBorder(Spacing.around(Spacing.TIGHT, number ? Spacing.NEAR : Spacing.TIGHT));
        label.setToolTipText(words);
        return label;
    }
}
