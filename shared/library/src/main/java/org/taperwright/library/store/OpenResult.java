package org.taperwright.library.store;

import org.taperwright.mechanics.work.Fault;

/** What came of opening a library. */
public sealed interface OpenResult {
    /** Open. */
    record Opened(LibraryStore store) implements OpenResult {}

    /** Left as it was, and why. */
    record Refused(Fault fault) implements OpenResult {}
}
