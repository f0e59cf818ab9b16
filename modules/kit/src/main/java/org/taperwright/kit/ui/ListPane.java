package org.taperwright.kit.ui;

import java.awt.BorderLayout;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextRows;

/** A list that can be copied and saved, with a sentence over it and buttons that act on it. */
final class ListPane extends JPanel {
    private final TextRows rows;
    private final JTable table;
    private final Prose told = new Prose("", Ink::quiet, false);
    private final JPanel buttons = new JPanel(new ShrinkingRow(Spacing.NEAR));

    /**
     * @param name what tests find its table by
     * @param title what it holds; names files
     * @param widths preferred widths of the columns, px
     */
    ListPane(String name, String title, List<String> headers, List<Integer> widths) {
        super(new BorderLayout(0, Spacing.NEAR));
        setBorder(Spacing.around(Spacing.NEAR));
        rows = new TextRows(headers);
        table = new JTable(rows);
        table.setName(name);
        table.getAccessibleContext().setAccessibleName(title);
        table.setShowGrid(false);
        table.setFillsViewportHeight(true);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_LAST_COLUMN);
        for (int i = 0; i < widths.size(); i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(widths.get(i));
        }
        if (table.getTableHeader().getDefaultRenderer() instanceof JLabel heading) {
            heading.setHorizontalAlignment(JLabel.LEADING);
        }
        CopyMenu.on(table, title, rows::data);
        told.setName(name + ".told");
        JButton copy = new JButton("Copy");
        copy.setName(name + ".copy");
        copy.setToolTipText("Copies the list as a spreadsheet takes it; right-click it to save it as CSV");
        copy.addActionListener(event -> Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(rows.data().tabbed()), null));
        buttons.setOpaque(false);
        buttons.add(copy);
        add(told, BorderLayout.NORTH);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        add(scroll, BorderLayout.CENTER);
        add(buttons, BorderLayout.SOUTH);
    }

    /** Shows rows under a sentence. */
    void show(String sentence, List<List<String>> shown) {
        told.setText(sentence);
        rows.show(shown);
    }

    /** Puts a further button beneath. */
    JButton button(String words, String explanation, Runnable action) {
        JButton button = new JButton(words);
        button.setName(table.getName() + "."
                + words.replace("…", "").toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
        button.setToolTipText(explanation);
        button.addActionListener(event -> action.run());
        buttons.add(button);
        return button;
    }

    /** The table. */
    JTable table() {
        return table;
    }
}
