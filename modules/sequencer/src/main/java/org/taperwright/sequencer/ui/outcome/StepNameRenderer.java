package org.taperwright.sequencer.ui.outcome;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import org.taperwright.sequencer.outcome.OutcomeRow;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/** Names a line: the step, and beneath it its size and whether there are remarks; a third further in. */
final class StepNameRenderer extends JPanel implements TableCellRenderer {
    private final JLabel name = new JLabel();
    private final JLabel detail = new JLabel();

    StepNameRenderer() {
        super(new BorderLayout());
        setOpaque(true);
        JPanel lines = new JPanel(new BorderLayout());
        lines.setOpaque(false);
        lines.add(name, BorderLayout.NORTH);
        lines.add(detail, BorderLayout.SOUTH);
        add(lines, BorderLayout.NORTH);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        OutcomeRow line = (OutcomeRow) value;
        setBackground(selected ? table.getSelectionBackground() : table.getBackground());
        int inset = line.principal() ? Spacing.TIGHT : 2 * Spacing.APART;
        setBorder(BorderFactory.createEmptyBorder(2, inset, 2, Spacing.NEAR));
        name.setText(line.label());
        boolean whole = line.principal() && line.place().isEmpty();
        name.setFont(whole ? table.getFont().deriveFont(Font.BOLD) : table.getFont());
        name.setForeground(selected ? table.getSelectionForeground() : ink(table));
        detail.setText(line.detail());
        detail.setVisible(!line.detail().isEmpty());
        detail.setFont(Ink.smallFont());
        boolean remarked = !line.remarks().isEmpty();
        detail.setForeground(selected ? table.getSelectionForeground() : remarked ? Ink.unusual() : Ink.quiet());
        String words = line.label() + (line.detail().isEmpty() ? "" : ", " + line.detail());
        getAccessibleContext().setAccessibleName(words);
        return this;
    }

    private static java.awt.Color ink(JTable table) {
        return table.isEnabled() ? table.getForeground() : Ink.mix(table.getForeground(), table.getBackground(), 0.5);
    }
}
