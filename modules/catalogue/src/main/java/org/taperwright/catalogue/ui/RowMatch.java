package org.taperwright.catalogue.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.taperwright.library.search.InstrumentMatch;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.Snapshot;

/** Whether a filter lets a row of the table through; its words are looked for in all that the table can show of it. */
final class RowMatch implements Predicate<InstrumentRow> {
    private final SearchWords words;
    private final InstrumentMatch match;

    /** For one walk over the rows of a library; a motor that is gone lets none through. */
    RowMatch(InstrumentFilter filter, Snapshot library) {
        words = SearchWords.of(filter.words());
        match = new InstrumentMatch(filter, library);
    }

    /** Whether a filter lets everything through. */
    static boolean all(InstrumentFilter filter) {
        return filter.withWords(filter.words().strip()).equals(InstrumentFilter.ALL);
    }

    /** How many conditions a filter has besides its words. */
    static int conditions(InstrumentFilter filter) {
        int count = filter.inStock() ? 1 : 0;
        for (Optional<?> each : List.of(filter.size(), filter.taper(), filter.lengthMm(), filter.motor())) {
            count += each.isPresent() ? 1 : 0;
        }
        for (List<?> each : List.of(filter.families(), filter.alloys(), filter.motions())) {
            count += each.isEmpty() ? 0 : 1;
        }
        return count;
    }

    @Override
    public boolean test(InstrumentRow row) {
        return match.test(row.instrument()) && words.in(row.searched());
    }
}
