package org.taperwright.library.exchange.table;

import org.taperwright.library.exchange.FileFault;

/** What came of reading a table. */
public sealed interface TableOutcome {
    /** Rows that were read, and rows that were not. */
    long good();

    /** Rows with faults. */
    long bad();

    /** Read to its end. */
    record Done(long good, long bad) implements TableOutcome {}

    /** Broken off: what was given of it so far is not to be kept. */
    record Refused(FileFault fault, long good, long bad) implements TableOutcome {}
}
