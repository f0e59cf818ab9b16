package org.taperwright.sequencer.ui.outcome;

import java.awt.Component;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import org.taperwright.sequencer.outcome.OutcomeColumn;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.StandingMark;

/** The heading over a number: what it is, its unit, its standing. */
final class OutcomeHeading implements TableCellRenderer {
    private final DefaultTableCellRenderer label = new DefaultTableCellRenderer();

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        label.getTableCellRendererComponent(table, "", false, false, row, column);
        int model = table.convertColumnIndexToModel(column);
        label.setFont(table.getTableHeader().getFont());
        label.setForeground(table.getTableHeader().getForeground());
        label.setBackground(table.getTableHeader().getBackground());
        label.setBorder(Spacing.around(Spacing.TIGHT, 6));
        label.setVerticalAlignment(SwingConstants.BOTTOM);
        if (model < OutcomeTableModel.LEADING) {
            label.setHorizontalAlignment(SwingConstants.LEADING);
            label.setText("Step");
        } else {
            label.setHorizontalAlignment(SwingConstants.TRAILING);
            label.setText(words(OutcomeTableModel.outcome(model)));
        }
        return label;
    }

    private static String words(OutcomeColumn column) {
        String quiet = String.format("#%06x", Ink.quiet().getRGB() & 0xffffff);
        String second = column.secondLine().isEmpty() ? "" : column.secondLine();
        return "<html><div align='right'>" + column.firstLine() + "<br>" + second + "&nbsp;<br><span style='color:"
                + quiet + "'>" + column.unit() + "<br>" + column.standing().word() + "</span></div></html>";
    }

    /** What a column means, for its tooltip. */
    static String explanation(OutcomeColumn column) {
        return "<html><div width='340'>" + column.meaning() + ".<br>" + StandingMark.explanation(column.standing())
                + "</div></html>";
    }
}
