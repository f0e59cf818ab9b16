package org.taperwright.library.history;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.DemoLibrary;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.ReadResult;
import org.taperwright.library.store.Draft;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.ThingKind;

/** Fills a new library with the demo library, as one edit that is not on the walk of undo. */
public final class NewLibrary {
    /** The name of the edit. */
    public static final String EDIT = "Demo library";

    private NewLibrary() {}

    /**
     * Fills the store if nothing was ever stored in it.
     *
     * @return why it could not be filled; empty when it was or when there was nothing to do
     */
    public static List<FileFault> seed(LibraryStore store, String who, ReadResult demo) {
        if (store.lastRevision() > 0) {
            return List.of();
        }
        if (demo instanceof ReadResult.Refused refused) {
            return refused.faults();
        }
        List<Draft> drafts = ((ReadResult.Read) demo)
                .things().stream()
                        .map(each -> new Draft(each.id(), ThingKind.of(each.thing()), Optional.of(each.thing()), 0))
                        .toList();
        store.append(EDIT, who, Instant.now(), drafts);
        return List.of();
    }

    /** As {@link #seed(LibraryStore, String, ReadResult)} with the demo library of the class path. */
    public static List<FileFault> seed(LibraryStore store, String who) {
        return seed(store, who, DemoLibrary.load());
    }
}
