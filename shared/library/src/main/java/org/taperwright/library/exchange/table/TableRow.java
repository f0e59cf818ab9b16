package org.taperwright.library.exchange.table;

import java.util.List;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.mechanics.design.ThingId;

/** What became of a row of a table. */
public sealed interface TableRow {
    /** The line where it begins. */
    int line();

    /**
     * A row that was read.
     *
     * @param line where it begins
     * @param id the thing it is of: the one it names, or else one made of what tells the thing from others, so that reading
     *     the same table twice adds nothing twice
     * @param thing the thing
     * @param verbatim as it stood in the file
     */
    record Good(int line, ThingId id, Record thing, String verbatim) implements TableRow {}

    /**
     * A row with faults.
     *
     * @param line where it begins
     * @param verbatim as it stood in the file
     * @param faults at least one; {@link org.taperwright.mechanics.work.Fault#where} is the field's name
     */
    record Bad(int line, String verbatim, List<FileFault> faults) implements TableRow {
        public Bad {
            faults = List.copyOf(faults);
        }
    }
}
