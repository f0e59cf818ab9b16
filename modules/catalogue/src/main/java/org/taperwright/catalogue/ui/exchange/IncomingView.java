package org.taperwright.catalogue.ui.exchange;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.table.ColumnMapping;
import org.taperwright.library.exchange.transfer.ImportPlan;
import org.taperwright.mechanics.design.ThingId;

/**
 * What a file would bring in, before anything happens.
 *
 * @param incoming the file and how it was read
 * @param format how the table is written; absent for a file in JSON form or one that could not be begun
 * @param mapping which column means which field
 * @param samples the first values of each column
 * @param rejected the first of the lines that cannot be read, each with line, column and reason
 * @param order its things as they are listed: what has to be decided first, then what is new, then what is the same
 * @param plan what would come in; absent when the file as a whole is refused
 */
record IncomingView(
        Incoming incoming,
        Optional<CsvFormat> format,
        Optional<ColumnMapping> mapping,
        List<String> samples,
        List<FileFault> rejected,
        List<ThingId> order,
        Optional<ImportPlan> plan) {
    IncomingView {
        samples = List.copyOf(samples);
        rejected = List.copyOf(rejected);
        order = List.copyOf(order);
    }

    /** A file that is refused as a whole. */
    static IncomingView refused(Incoming incoming, List<FileFault> faults) {
        return new IncomingView(
                incoming, Optional.empty(), Optional.empty(), List.of(), faults, List.of(), Optional.empty());
    }

    /** The same with other choices. */
    IncomingView planned(ImportPlan other) {
        return new IncomingView(incoming, format, mapping, samples, rejected, order, Optional.of(other));
    }
}
