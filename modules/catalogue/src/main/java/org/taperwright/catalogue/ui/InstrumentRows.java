package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Work;

/**
 * Makes the rows of a library's instruments, off the event thread; a row whose entry is unchanged is taken over.
 *
 * @param snapshot the library
 * @param before the rows shown so far
 */
record InstrumentRows(Snapshot snapshot, List<InstrumentRow> before) implements Work<List<InstrumentRow>> {
    private static final int BETWEEN_CHECKS = 1000;

    InstrumentRows {
        before = List.copyOf(before);
    }

    @Override
    public List<InstrumentRow> run(Progress progress) {
        Map<ThingId, InstrumentRow> known = new HashMap<>();
        before.forEach(row -> known.put(row.id(), row));
        List<InstrumentRow> rows = new ArrayList<>();
        int seen = 0;
        for (Entry entry : snapshot.entries().values()) {
            if (++seen % BETWEEN_CHECKS == 0) {
                progress.check();
                progress.at((double) seen / snapshot.entries().size(), "instruments");
            }
            if (entry.kind() == ThingKind.INSTRUMENT) {
                InstrumentRow row = known.get(entry.id());
                rows.add(row != null && row.entry() == entry ? row : InstrumentRow.of(entry));
            }
        }
        return rows;
    }
}
