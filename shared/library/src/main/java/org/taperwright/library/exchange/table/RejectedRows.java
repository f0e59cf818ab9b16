package org.taperwright.library.exchange.table;

import java.io.IOException;
import java.util.stream.Collectors;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.csv.CsvWriter;

/**
 * Writes the rows that were not read as they stood, each with the reason before it, so that they can be mended and read
 * again: reading passes over the column of reasons.
 */
public final class RejectedRows {
    private final Appendable out;
    private final CsvFormat format;

    /** Writes to an appendable, which stays open, in the format of the table they came from. */
    public RejectedRows(Appendable out, CsvFormat format) {
        this.out = out;
        this.format = format;
    }

    /** The headings, as they stood. */
    public void begin(String header) throws IOException {
        write(Headings.REASON, header);
    }

    /** A row. */
    public void row(TableRow.Bad row) throws IOException {
        write(
                row.faults().stream()
                        .map(fault -> "line " + fault.line() + ", column " + fault.column() + ": "
                                + fault.fault().sentence())
                        .collect(Collectors.joining(" / ")),
                row.verbatim());
    }

    private void write(String reason, String verbatim) throws IOException {
        StringBuilder cell = new StringBuilder();
        new CsvWriter(cell, format).text(reason);
        out.append(cell).append(format.delimiter()).append(verbatim).append("\r\n");
    }

    /** One line for people about a row. */
    public static String sentence(TableRow.Bad row) {
        return row.faults().stream().map(FileFault::sentence).collect(Collectors.joining("\n"));
    }
}
