package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.RowSorter.SortKey;
import javax.swing.SortOrder;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;

/**
 * The instruments as the table shows them at a moment: all rows, their order, and those that the filter lets through.
 * Made off the event thread by {@link InstrumentListing}; the arrays are never changed afterwards.
 *
 * @param snapshot the library
 * @param rows all rows, in no order of their own
 * @param index where each instrument stands among the rows
 * @param keys by which columns the rows are ordered
 * @param sorted the rows in order
 * @param filter what is let through
 * @param shown the rows let through, in order
 * @param places where each row is shown, -1 for those held back
 * @param choices what there is to choose from
 */
record InstrumentList(
        Snapshot snapshot,
        List<InstrumentRow> rows,
        Map<ThingId, Integer> index,
        List<SortKey> keys,
        int[] sorted,
        InstrumentFilter filter,
        int[] shown,
        int[] places,
        InstrumentChoices choices) {
    /** How an empty table is ordered: by size, then taper, then name. */
    static final List<SortKey> USUAL_ORDER = List.of(
            new SortKey(InstrumentColumn.SIZE.ordinal(), SortOrder.ASCENDING),
            new SortKey(InstrumentColumn.TAPER.ordinal(), SortOrder.ASCENDING),
            new SortKey(InstrumentColumn.NAME.ordinal(), SortOrder.ASCENDING));

    /** Before anything is listed. */
    static final InstrumentList NOTHING = new InstrumentList(
            new Snapshot(0, Map.of()),
            List.of(),
            Map.of(),
            USUAL_ORDER,
            new int[0],
            InstrumentFilter.ALL,
            new int[0],
            new int[0],
            InstrumentChoices.NONE);

    /** The row at a place of the table. */
    InstrumentRow at(int place) {
        return rows.get(shown[place]);
    }

    /** Where an instrument is shown; empty when it is held back or gone. */
    Optional<Integer> place(ThingId id) {
        return Optional.ofNullable(index.get(id)).map(row -> places[row]).filter(place -> place >= 0);
    }

    /** The rows at some places. */
    List<InstrumentRow> at(int[] chosen) {
        List<InstrumentRow> found = new ArrayList<>(chosen.length);
        for (int place : chosen) {
            found.add(at(place));
        }
        return found;
    }
}
