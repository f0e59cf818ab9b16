package org.taperwright.catalogue.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableCellRenderer;
import org.jspecify.annotations.Nullable;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.instrument.Supply;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.NumberCells;
import org.taperwright.workbench.ui.SizeChip;
import org.taperwright.workbench.ui.Spacing;

/** The table itself: chip and number by size, numbers aligned, rows to drag. */
final class InstrumentTable extends JTable {
    private static final int SAMPLE = 60;
    private static final int SORT_MARK = 16;
    private static final int WIDEST = 320;

    private final transient InstrumentTableModel instruments;
    private final transient SizeCell sizeCell = new SizeCell();
    private final transient TaperCell taperCell = new TaperCell();
    private final transient NumberCells lengthCell = new NumberCells(length -> Shown.number(length, 0, 1), 1);
    private final transient StockCell stockCell = new StockCell();

    InstrumentTable(InstrumentTableModel model, InstrumentSorter sorter) {
        super(model);
        instruments = model;
        setAutoCreateColumnsFromModel(false);
        setRowSorter(sorter);
        setName("instruments.table");
        getAccessibleContext().setAccessibleName("Instruments");
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setShowGrid(false);
        setIntercellSpacing(new Dimension(0, 0));
        setFillsViewportHeight(true);
        setTransferHandler(new ThingDrag(this::selectedThings));
        if (getTableHeader().getDefaultRenderer() instanceof JLabel heading) {
            heading.setHorizontalAlignment(JLabel.LEADING);
        }
    }

    /** Selects a row as it is pressed, so that one gesture drags it; the table by itself drags only what is selected. */
    @Override
    protected void processMouseEvent(MouseEvent event) {
        if (event.getID() == MouseEvent.MOUSE_PRESSED && !event.isShiftDown() && !event.isControlDown()) {
            int row = rowAtPoint(event.getPoint());
            if (row >= 0 && !isRowSelected(row)) {
                setRowSelectionInterval(row, row);
            }
        }
        super.processMouseEvent(event);
    }

    /** Dragging needs a display, so it is switched on where there is one. */
    @Override
    public void addNotify() {
        super.addNotify();
        setDragEnabled(true);
    }

    /** Makes columns as wide as their headings and a sample of their cells need, within reason. */
    void fitColumns() {
        int rows = getRowCount();
        int step = Math.max(1, rows / SAMPLE);
        for (int column = 0; column < getColumnCount(); column++) {
            TableCellRenderer heading = getTableHeader().getDefaultRenderer();
            Object title = getColumnModel().getColumn(column).getHeaderValue();
            int width = heading.getTableCellRendererComponent(this, title, false, false, -1, column)
                            .getPreferredSize()
                            .width
                    + SORT_MARK;
            for (int row = 0; row < rows; row += step) {
                Component cell = prepareRenderer(getCellRenderer(row, column), row, column);
                width = Math.max(width, cell.getPreferredSize().width + Spacing.TIGHT);
            }
            getColumnModel().getColumn(column).setPreferredWidth(Math.min(WIDEST, width));
        }
    }

    /** Calls back when a person opens an instrument, by a double click or Enter. */
    void onOpen(Consumer<ThingId> open) {
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "open");
        getActionMap().put("open", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                selectedThings().stream().findFirst().ifPresent(open);
            }
        });
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2 && rowAtPoint(event.getPoint()) >= 0) {
                    selectedThings().stream().findFirst().ifPresent(open);
                }
            }
        });
    }

    /** The instruments selected, in the order shown. */
    List<ThingId> selectedThings() {
        List<ThingId> ids = new ArrayList<>();
        for (int row : getSelectedRows()) {
            ids.add(row(row).id());
        }
        return ids;
    }

    /** The row at a place of the table as shown. */
    InstrumentRow row(int place) {
        return instruments.list().at(place);
    }

    /** The rows selected, in the order shown. */
    List<InstrumentRow> selectedRows() {
        return instruments.list().at(getSelectedRows());
    }

    /** Selects these instruments as far as they are shown, and scrolls to the first if asked. */
    void select(List<ThingId> ids, boolean scroll) {
        int[] places = ids.stream()
                .flatMap(id -> instruments.list().place(id).stream())
                .mapToInt(Integer::intValue)
                .sorted()
                .toArray();
        getSelectionModel().setValueIsAdjusting(true);
        clearSelection();
        for (int i = 0; i < places.length; i++) {
            int from = i;
            while (i + 1 < places.length && places[i + 1] == places[i] + 1) {
                i++;
            }
            addRowSelectionInterval(places[from], places[i]);
        }
        getSelectionModel().setValueIsAdjusting(false);
        if (scroll && places.length > 0) {
            scrollRectToVisible(getCellRect(places[0], 0, true));
        }
    }

    @Override
    public TableCellRenderer getCellRenderer(int row, int column) {
        return switch (InstrumentColumn.values()[convertColumnIndexToModel(column)]) {
            case SIZE -> sizeCell;
            case TAPER -> taperCell;
            case LENGTH, WORKING_PART -> lengthCell;
            case STOCK -> stockCell;
            default -> super.getCellRenderer(row, column);
        };
    }

    @Override
    public Component prepareRenderer(TableCellRenderer renderer, int row, int column) {
        Component component = super.prepareRenderer(renderer, row, column);
        if (component instanceof DefaultTableCellRenderer label && renderer != lengthCell) {
            label.setBorder(Spacing.around(0, Spacing.TIGHT));
            label.setToolTipText(label.getText().isEmpty() ? null : label.getText());
        }
        return component;
    }

    @Override
    protected JTableHeader createDefaultTableHeader() {
        return new JTableHeader(getColumnModel()) {
            @Override
            public @Nullable String getToolTipText(MouseEvent event) {
                Point at = event.getPoint();
                int column = columnAtPoint(at);
                return column < 0
                        ? null
                        : InstrumentColumn.values()[getTable().convertColumnIndexToModel(column)].explanation();
            }
        };
    }

    /** Size as chip and number, with the colour's word read out. */
    private static final class SizeCell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            InstrumentRow shown = ((InstrumentTable) table).row(row);
            String number = IsoSizes.text(shown.designation().size());
            String colour = shown.designation().colour().map(SizeColour::word).orElse("no colour in the standard");
            super.getTableCellRendererComponent(table, number, selected, focused, row, column);
            setIcon(new SizeChip(colour));
            setIconTextGap(Spacing.TIGHT + 2);
            getAccessibleContext().setAccessibleName("size " + number + ", " + colour);
            return this;
        }
    }

    /** Taper as the trade writes it. */
    private static final class TaperCell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            String taper =
                    Shown.taper(((InstrumentTable) table).row(row).designation().taper());
            return super.getTableCellRendererComponent(table, taper, selected, focused, row, column);
        }
    }

    /** The stock, with a word when it is below its reorder level. */
    private static final class StockCell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            Supply supply = ((InstrumentTable) table).row(row).instrument().supply();
            String text = supply.low() ? supply.stock() + " low" : Integer.toString(supply.stock());
            super.getTableCellRendererComponent(table, text, selected, focused, row, column);
            if (!selected) {
                setForeground(supply.low() ? Ink.unusual() : table.getForeground());
            }
            return this;
        }
    }
}
