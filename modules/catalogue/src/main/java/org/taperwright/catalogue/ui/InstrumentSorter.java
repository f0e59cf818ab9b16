package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import javax.swing.RowSorter;
import javax.swing.SortOrder;

/**
 * Orders and filters the instruments. All rows are sorted only when the order or the rows change; typing in the filter
 * walks once over the sorted rows, which keeps tens of thousands of them immediate.
 */
final class InstrumentSorter extends RowSorter<InstrumentTableModel> {
    private static final int MOST_KEYS = 3;
    private static final int NOT_SHOWN = -1;

    private final InstrumentTableModel model;
    private List<SortKey> keys = List.of(
            new SortKey(InstrumentColumn.SIZE.ordinal(), SortOrder.ASCENDING),
            new SortKey(InstrumentColumn.TAPER.ordinal(), SortOrder.ASCENDING),
            new SortKey(InstrumentColumn.NAME.ordinal(), SortOrder.ASCENDING));
    private SearchWords words = SearchWords.of("");
    private int[] sorted = {};
    private int[] shown = {};
    private int[] places = {};

    InstrumentSorter(InstrumentTableModel model) {
        this.model = model;
    }

    /** Lets through only rows in which every word occurs. */
    void filter(SearchWords newWords) {
        words = newWords;
        int[] before = shown;
        applyFilter();
        fireRowSorterChanged(before);
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
        int[] before = shown;
        sort();
        fireRowSorterChanged(before);
    }

    @Override
    public List<? extends SortKey> getSortKeys() {
        return keys;
    }

    @Override
    public int convertRowIndexToModel(int index) {
        return shown[index];
    }

    @Override
    public int convertRowIndexToView(int index) {
        return places[index];
    }

    @Override
    public int getViewRowCount() {
        return shown.length;
    }

    @Override
    public int getModelRowCount() {
        return model.getRowCount();
    }

    @Override
    public void modelStructureChanged() {
        sort();
    }

    @Override
    public void allRowsChanged() {
        sort();
    }

    @Override
    public void rowsInserted(int firstRow, int endRow) {
        sort();
    }

    @Override
    public void rowsDeleted(int firstRow, int endRow) {
        sort();
    }

    @Override
    public void rowsUpdated(int firstRow, int endRow) {
        sort();
    }

    @Override
    public void rowsUpdated(int firstRow, int endRow, int column) {
        sort();
    }

    private void sort() {
        List<InstrumentRow> rows = model.rows();
        Integer[] order = new Integer[rows.size()];
        Arrays.setAll(order, i -> i);
        Comparator<InstrumentRow> comparator = comparator();
        Arrays.sort(order, (a, b) -> comparator.compare(rows.get(a), rows.get(b)));
        sorted = Arrays.stream(order).mapToInt(Integer::intValue).toArray();
        applyFilter();
    }

    private Comparator<InstrumentRow> comparator() {
        Comparator<InstrumentRow> comparator = Comparator.comparing(InstrumentRow::id);
        for (int i = keys.size() - 1; i >= 0; i--) {
            Comparator<InstrumentRow> next =
                    InstrumentColumn.values()[keys.get(i).getColumn()].order();
            comparator = (keys.get(i).getSortOrder() == SortOrder.DESCENDING ? next.reversed() : next)
                    .thenComparing(comparator);
        }
        return comparator;
    }

    private void applyFilter() {
        List<InstrumentRow> rows = model.rows();
        shown = words.none()
                ? sorted
                : Arrays.stream(sorted)
                        .filter(row -> words.in(rows.get(row).searched()))
                        .toArray();
        places = new int[rows.size()];
        Arrays.fill(places, NOT_SHOWN);
        for (int i = 0; i < shown.length; i++) {
            places[shown[i]] = i;
        }
    }
}
