package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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

    /** Rows stay in the place they had; new ones come at the end. */
    @Override
    public List<InstrumentRow> run(Progress progress) {
        List<InstrumentRow> rows = new ArrayList<>();
        Set<ThingId> known = new HashSet<>();
        for (InstrumentRow row : before) {
            known.add(row.id());
            snapshot.entry(row.id())
                    .filter(entry -> entry.kind() == ThingKind.INSTRUMENT)
                    .ifPresent(entry -> rows.add(row.entry() == entry ? row : InstrumentRow.of(entry)));
        }
        int seen = 0;
        for (Entry entry : snapshot.entries().values()) {
            if (++seen % BETWEEN_CHECKS == 0) {
                progress.check();
                progress.at((double) seen / snapshot.entries().size(), "instruments");
            }
            if (entry.kind() == ThingKind.INSTRUMENT && !known.contains(entry.id())) {
                rows.add(InstrumentRow.of(entry));
            }
        }
        return rows;
    }
}
