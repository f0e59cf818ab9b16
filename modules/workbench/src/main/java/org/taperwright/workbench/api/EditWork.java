package org.taperwright.workbench.api;

import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.work.Progress;

/** Works an edit of many things out, off the event thread. It is asked again when the library changes meanwhile. */
@FunctionalInterface
public interface EditWork {
    /** The edit as it follows from the library. */
    NamedEdit of(Snapshot library, Progress progress);
}
