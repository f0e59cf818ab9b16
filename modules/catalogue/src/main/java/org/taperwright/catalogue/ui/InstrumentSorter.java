package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.RowSorter;
import javax.swing.SortOrder;

/**
 * Gives the table the order and the filter of the list it shows. It sorts nothing itself: a press on a heading asks for a
 * new list, which is made off the event thread.
 */
final class InstrumentSorter extends RowSorter<InstrumentTableModel> {
    private static final int MOST_KEYS = 3;

    private final InstrumentTableModel model;
    private List<SortKey> keys = InstrumentList.USUAL_ORDER;
    private Consumer<List<SortKey>> ask = asked -> {};

    InstrumentSorter(InstrumentTableModel model) {
        this.model = model;
    }

    /** Receives the order that a person asks for. */
    void onOrder(Consumer<List<SortKey>> asking) {
        ask = asking;
    }

    @Override
    public InstrumentTableModel getModel() {
        return model;
    }

    @Override
    public void toggleSortOrder(int column) {
        boolean first = !keys.isEmpty() && keys.get(0).getColumn() == column;
        SortOrder order =
                first && keys.get(0).getSortOrder() == SortOrder.ASCENDING ? SortOrder.DESCENDING : SortOrder.ASCENDING;
        List<SortKey> next = new ArrayList<>();
        next.add(new SortKey(column, order));
        keys.stream()
                .filter(key -> key.getColumn() != column)
                .limit(MOST_KEYS - 1L)
                .forEach(next::add);
        setSortKeys(next);
    }

    @Override
    public void setSortKeys(List<? extends SortKey> newKeys) {
        keys = List.copyOf(newKeys);
        fireSortOrderChanged();
        ask.accept(keys);
    }

    @Override
    public List<SortKey> getSortKeys() {
        return keys;
    }

    @Override
    public int convertRowIndexToModel(int index) {
        return model.list().shown()[index];
    }

    @Override
    public int convertRowIndexToView(int index) {
        return model.list().places()[index];
    }

    @Override
    public int getViewRowCount() {
        return model.list().shown().length;
    }

    @Override
    public int getModelRowCount() {
        return model.getRowCount();
    }

    @Override
    public void modelStructureChanged() {
        // the list brings its order
    }

    @Override
    public void allRowsChanged() {
        // the list brings its order
    }

    @Override
    public void rowsInserted(int firstRow, int endRow) {
        // the list brings its order
    }

    @Override
    public void rowsDeleted(int firstRow, int endRow) {
        // the list brings its order
    }

    @Override
    public void rowsUpdated(int firstRow, int endRow) {
        // the list brings its order
    }

    @Override
    public void rowsUpdated(int firstRow, int endRow, int column) {
        // the list brings its order
    }
}
