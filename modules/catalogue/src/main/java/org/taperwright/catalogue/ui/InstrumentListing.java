package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.RowSorter.SortKey;
import javax.swing.SortOrder;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Work;

/**
 * Lists a library's instruments off the event thread. What has not changed since the list before is taken over: rows whose
 * entry is the same, the order when neither rows nor keys are new; so that typing in the filter only walks once over the
 * ordered rows.
 *
 * @param before the list shown so far
 * @param snapshot the library
 * @param keys by which columns to order
 * @param filter what to let through
 */
record InstrumentListing(InstrumentList before, Snapshot snapshot, List<SortKey> keys, InstrumentFilter filter)
        implements Work<InstrumentList> {
    private static final int BETWEEN_CHECKS = 2000;
    private static final int NOT_SHOWN = -1;

    InstrumentListing {
        keys = List.copyOf(keys);
    }

    @Override
    public InstrumentList run(Progress progress) {
        List<InstrumentRow> rows = snapshot == before.snapshot() ? before.rows() : rows(progress);
        boolean sameRows = rows == before.rows();
        Map<ThingId, Integer> index = sameRows ? before.index() : index(rows);
        progress.check();
        int[] sorted = sameRows && keys.equals(before.keys()) ? before.sorted() : sorted(rows, index, progress);
        int[] shown = shown(rows, sorted, progress);
        int[] places = new int[rows.size()];
        Arrays.fill(places, NOT_SHOWN);
        for (int i = 0; i < shown.length; i++) {
            places[shown[i]] = i;
        }
        return new InstrumentList(snapshot, rows, index, keys, sorted, filter, shown, places, choices(rows));
    }

    /** The very list of before when nothing in it has changed. */
    private List<InstrumentRow> rows(Progress progress) {
        List<InstrumentRow> rows = new ArrayList<>(before.rows().size() + 16);
        KnownAlloys alloys = snapshot.alloys();
        Map<String, String> labels = new HashMap<>();
        boolean sameAlloys = alloys.equals(before.snapshot().alloys());
        boolean same = true;
        int seen = 0;
        for (Entry entry : snapshot.entries().values()) {
            if (++seen % BETWEEN_CHECKS == 0) {
                progress.check();
                progress.at((double) seen / snapshot.entries().size(), "instruments");
            }
            if (entry.kind() == ThingKind.INSTRUMENT) {
                Integer at = before.index().get(entry.id());
                boolean known =
                        sameAlloys && at != null && before.rows().get(at).entry() == entry;
                rows.add(
                        known
                                ? before.rows().get(at)
                                : InstrumentRow.of(entry, id -> labels.computeIfAbsent(id, alloys::label)));
                same &= known;
            }
        }
        return same && rows.size() == before.rows().size() ? before.rows() : rows;
    }

    private InstrumentChoices choices(List<InstrumentRow> rows) {
        if (snapshot == before.snapshot()) {
            return before.choices();
        }
        InstrumentChoices now = rows == before.rows() ? before.choices() : InstrumentChoices.of(rows);
        return now.withMotors(snapshot.ofKind(ThingKind.MOTOR));
    }

    private static Map<ThingId, Integer> index(List<InstrumentRow> rows) {
        Map<ThingId, Integer> index = new HashMap<>(rows.size() * 2);
        for (int i = 0; i < rows.size(); i++) {
            index.put(rows.get(i).id(), i);
        }
        return index;
    }

    /** Sorts by keys made once for each row; begins with the order before, which mostly still holds. */
    private int[] sorted(List<InstrumentRow> rows, Map<ThingId, Integer> index, Progress progress) {
        List<Comparable<?>[]> columns = new ArrayList<>();
        boolean[] descending = new boolean[keys.size()];
        for (int i = 0; i < descending.length; i++) {
            InstrumentColumn column = InstrumentColumn.values()[keys.get(i).getColumn()];
            Comparable<?>[] made = new Comparable<?>[rows.size()];
            Arrays.setAll(made, row -> column.key(rows.get(row)));
            columns.add(made);
            descending[i] = keys.get(i).getSortOrder() == SortOrder.DESCENDING;
            progress.check();
        }
        Integer[] order = orderBefore(rows, index);
        Arrays.sort(order, (a, b) -> {
            for (int i = 0; i < descending.length; i++) {
                int way = compare(columns.get(i)[a], columns.get(i)[b]);
                if (way != 0) {
                    return descending[i] ? -way : way;
                }
            }
            return rows.get(a).id().compareTo(rows.get(b).id());
        });
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    }

    private Integer[] orderBefore(List<InstrumentRow> rows, Map<ThingId, Integer> index) {
        List<Integer> order = new ArrayList<>(rows.size());
        boolean[] taken = new boolean[rows.size()];
        for (int row : before.sorted()) {
            Integer now = index.get(before.rows().get(row).id());
            if (now != null) {
                order.add(now);
                taken[now] = true;
            }
        }
        for (int row = 0; row < taken.length; row++) {
            if (!taken[row]) {
                order.add(row);
            }
        }
        return order.toArray(Integer[]::new);
    }

    /** Compares two keys of one column: both numbers or both texts. */
    private static int compare(Comparable<?> a, Comparable<?> b) {
        return a instanceof Double number ? Double.compare(number, (Double) b) : ((String) a).compareTo((String) b);
    }

    private int[] shown(List<InstrumentRow> rows, int[] sorted, Progress progress) {
        if (RowMatch.all(filter)) {
            return sorted;
        }
        RowMatch match = new RowMatch(filter, snapshot);
        int[] through = new int[sorted.length];
        int count = 0;
        for (int i = 0; i < sorted.length; i++) {
            if (i % BETWEEN_CHECKS == 0) {
                progress.check();
            }
            if (match.test(rows.get(sorted[i]))) {
                through[count++] = sorted[i];
            }
        }
        return Arrays.copyOf(through, count);
    }
}
