package org.taperwright.sequencer.ui.outcome;

import java.awt.Dimension;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableCellRenderer;
import org.jspecify.annotations.Nullable;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.sequencer.outcome.OutcomeCell;
import org.taperwright.sequencer.outcome.OutcomeData;
import org.taperwright.sequencer.outcome.OutcomeRow;
import org.taperwright.shaping.passage.Third;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/** Shows {@link OutcomeTableModel}; greyed, and disabled for assistive technology, while its numbers are outdated. */
final class OutcomeTable extends JTable {
    private static final int THIRDS = Third.values().length;
    private static final int LEAST_NAME = 168;

    private final transient OutcomeTableModel model;
    private final transient BandedCellRenderer cells = new BandedCellRenderer();
    private final transient StepNameRenderer names = new StepNameRenderer();
    private final transient IntConsumer select;
    private boolean telling;

    /** A table that tells which step a person selects. */
    OutcomeTable(IntConsumer select) {
        super(new OutcomeTableModel());
        this.select = select;
        model = (OutcomeTableModel) getModel();
        setName("outcome.table");
        getAccessibleContext().setAccessibleName("What each step does");
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setShowGrid(false);
        setIntercellSpacing(new Dimension(0, 0));
        setFillsViewportHeight(true);
        getTableHeader().setReorderingAllowed(false);
        for (int c = 0; c < getColumnCount(); c++) {
            // each column its own: the header's height then follows the highest of them
            getColumnModel().getColumn(c).setHeaderRenderer(new OutcomeHeading());
        }
        getSelectionModel().addListSelectionListener(event -> tell());
        setAutoCreateColumnsFromModel(false);
        CopyMenu.on(this, "What each step does", () -> OutcomeData.of(model.rows()));
        fit();
    }

    /** Shows lines, and the step selected. */
    void show(List<OutcomeRow> rows, int selected) {
        telling = false;
        Optional<OutcomeRow> before = selectedRow();
        if (!rows.equals(model.rows())) {
            model.show(rows);
            fit();
        }
        int row = rowOf(rows, before, selected);
        if (row >= 0 && row != getSelectedRow()) {
            setRowSelectionInterval(row, row);
            scrollRectToVisible(getCellRect(row, 0, true)
                    .union(getCellRect(Math.min(row + THIRDS, rows.size() - 1), 0, true)));
            // where there is no room for all of them, the step's own line comes first
            scrollRectToVisible(getCellRect(row, 0, true));
        } else if (row < 0) {
            clearSelection();
        }
        telling = true;
    }

    /** The line that was selected, if it still is about the selected step; else that step's own. */
    private static int rowOf(List<OutcomeRow> rows, Optional<OutcomeRow> before, int selected) {
        int found = -1;
        for (int i = 0; i < rows.size(); i++) {
            OutcomeRow row = rows.get(i);
            boolean same = before.filter(old ->
                            old.place().equals(row.place()) && old.third().equals(row.third()))
                    .isPresent();
            boolean ofStep = row.place().equals(Optional.of(selected));
            if (same && (ofStep || row.place().isEmpty())) {
                return i;
            }
            if (ofStep && row.principal()) {
                found = i;
            }
        }
        return found;
    }

    private Optional<OutcomeRow> selectedRow() {
        int row = getSelectedRow();
        return row >= 0 && row < model.rows().size() ? Optional.of(row(row)) : Optional.empty();
    }

    private void tell() {
        if (telling) {
            selectedRow().flatMap(OutcomeRow::place).ifPresent(select::accept);
        }
    }

    /** The line at an index. */
    OutcomeRow row(int index) {
        return model.rows().get(index);
    }

    /** The table in a scroll pane, with its headings. */
    JScrollPane scrolled() {
        JScrollPane scroll = new JScrollPane(this);
        scroll.setColumnHeaderView(getTableHeader());
        scroll.setName("outcome.scroll");
        return scroll;
    }

    private void fit() {
        int lines = getFontMetrics(getFont()).getHeight()
                + getFontMetrics(Ink.smallFont()).getHeight()
                + Spacing.TIGHT
                + 2;
        setRowHeight(lines);
        for (int c = 0; c < getColumnCount(); c++) {
            int width = getColumnModel()
                    .getColumn(c)
                    .getHeaderRenderer()
                    .getTableCellRendererComponent(this, "", false, false, -1, c)
                    .getPreferredSize()
                    .width;
            width = c == 0 ? Math.max(width, LEAST_NAME) : width;
            for (int r = 0; r < getRowCount(); r++) {
                width = Math.max(
                        width, prepareRenderer(getCellRenderer(r, c), r, c).getPreferredSize().width);
            }
            getColumnModel().getColumn(c).setMinWidth(width);
            getColumnModel().getColumn(c).setPreferredWidth(width);
        }
    }

    /** Narrower than all columns need, the table scrolls sideways rather than squeeze them. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getParent().getWidth() >= getMinimumSize().width;
    }

    @Override
    public TableCellRenderer getCellRenderer(int row, int column) {
        return column < OutcomeTableModel.LEADING ? names : cells;
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        int row = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint());
        if (row < 0 || column < 0) {
            return null;
        }
        if (column >= OutcomeTableModel.LEADING) {
            OutcomeCell cell = row(row).cell(OutcomeTableModel.outcome(column));
            return cell.value().isEmpty()
                    ? null
                    : "<html>" + (cell.note().isEmpty() ? "" : cell.note() + ".<br>")
                            + OutcomeHeading.explanation(OutcomeTableModel.outcome(column))
                                    .substring("<html>".length());
        }
        return row(row).remarks().isEmpty() ? null : remarks(row(row).remarks());
    }

    private static String remarks(List<Fault> remarks) {
        return remarks.stream()
                .map(fault -> fault.what() + "; " + fault.expected())
                .collect(Collectors.joining("<br>", "<html>", "</html>"));
    }

    @Override
    protected JTableHeader createDefaultTableHeader() {
        return new JTableHeader(columnModel) {
            @Override
            public @Nullable String getToolTipText(MouseEvent event) {
                int column = columnAtPoint(event.getPoint());
                return column < OutcomeTableModel.LEADING
                        ? null
                        : OutcomeHeading.explanation(OutcomeTableModel.outcome(column));
            }
        };
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (model != null) {
            fit();
        }
    }
}
