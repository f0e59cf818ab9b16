package org.taperwright.workbench.ui;

import java.awt.Dimension;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;

/** A table of {@link TextRows}: no grid, headings leading, a cell's whole text when the pointer rests on it. */
public final class TextTable extends JTable {
    private final TextRows rows;

    /**
     * @param name what tests and other code find it by
     * @param what what it holds, in people's words
     * @param widths preferred widths of the columns, px
     */
    public TextTable(String name, String what, List<String> headers, List<Integer> widths) {
        super(new TextRows(headers));
        rows = (TextRows) getModel();
        setName(name);
        getAccessibleContext().setAccessibleName(what);
        setShowGrid(false);
        setFillsViewportHeight(true);
        for (int i = 0; i < widths.size(); i++) {
            getColumnModel().getColumn(i).setPreferredWidth(widths.get(i));
        }
        if (getTableHeader().getDefaultRenderer() instanceof JLabel heading) {
            heading.setHorizontalAlignment(JLabel.LEADING);
        }
    }

    /** Shows other rows. */
    public void show(List<List<String>> shown) {
        rows.show(shown);
    }

    /** What is shown, for the clipboard and files. */
    public DataTable data() {
        return rows.data();
    }

    /** The table in a scroll pane, with its headings. */
    public JScrollPane scrolled() {
        JScrollPane scroll = new JScrollPane(this);
        scroll.setColumnHeaderView(getTableHeader());
        return scroll;
    }

    /** Narrower than its columns may be, the table scrolls sideways rather than squeeze them. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getParent().getWidth() >= getMinimumSize().width;
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension wanted = super.getPreferredSize();
        return getScrollableTracksViewportWidth() ? wanted : new Dimension(getMinimumSize().width, wanted.height);
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        int row = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint());
        return row < 0 || column < 0 ? "" : String.valueOf(getValueAt(row, column));
    }
}
