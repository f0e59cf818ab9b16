package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.Arrays;
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

    /** Sorts by keys made once for each row; begins with the order before, which mostly still holds. */
    private void sort() {
        List<InstrumentRow> rows = model.rows();
        List<Comparable<?>[]> columns = keys.stream()
                .map(key -> keys(InstrumentColumn.values()[key.getColumn()], rows))
                .toList();
        boolean[] descending = new boolean[columns.size()];
        for (int i = 0; i < descending.length; i++) {
            descending[i] = keys.get(i).getSortOrder() == SortOrder.DESCENDING;
        }
        Integer[] order = new Integer[rows.size()];
        boolean known = sorted.length == rows.size();
        Arrays.setAll(order, i -> known ? sorted[i] : i);
        Arrays.sort(order, (a, b) -> {
            for (int i = 0; i < descending.length; i++) {
                int way = compare(columns.get(i)[a], columns.get(i)[b]);
                if (way != 0) {
                    return descending[i] ? -way : way;
                }
            }
            return rows.get(a).id().compareTo(rows.get(b).id());
        });
        sorted = Arrays.stream(order).mapToInt(Integer::intValue).toArray();
        applyFilter();
    }

    private static Comparable<?>[] keys(InstrumentColumn column, List<InstrumentRow> rows) {
        Comparable<?>[] made = new Comparable<?>[rows.size()];
        Arrays.setAll(made, i -> column.key(rows.get(i)));
        return made;
    }

    /** Compares two keys of one column: both numbers or both texts. */
    private static int compare(Comparable<?> a, Comparable<?> b) {
        return a instanceof Double number ? Double.compare(number, (Double) b) : ((String) a).compareTo((String) b);
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
