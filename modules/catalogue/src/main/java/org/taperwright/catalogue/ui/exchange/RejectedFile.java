package org.taperwright.catalogue.ui.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.table.ColumnMapping;
import org.taperwright.library.exchange.table.Known;
import org.taperwright.library.exchange.table.RejectedRows;
import org.taperwright.library.exchange.table.RowSink;
import org.taperwright.library.exchange.table.TableReading;
import org.taperwright.library.exchange.table.TableRow;
import org.taperwright.library.exchange.text.TextSource;
import org.taperwright.library.exchange.text.WholeFile;
import org.taperwright.library.exchange.transfer.TableOffer;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.work.Progress;

/** The rows that could not be read, as they stood and each with its reason, written so that they can be mended and read again. */
final class RejectedFile {
    private RejectedFile() {}

    /**
     * Writes them, reading the table again.
     *
     * @return how many
     * @throws UncheckedIOException if the file cannot be written; what stood there stays
     */
    static long write(
            Path from, CsvFormat format, ColumnMapping mapping, Snapshot library, Path to, Progress progress) {
        CsvFormat written = new CsvFormat(StandardCharsets.UTF_8, format.delimiter(), format.decimal());
        try {
            long[] count = new long[1];
            WholeFile.write(to, out -> {
                Sink sink = new Sink(new RejectedRows(out, written));
                TableReading reading = new TableReading(TextSource.of(from), format, Known.of(library));
                new TableOffer(reading, mapping, sink).each(item -> {}, progress);
                count[0] = sink.count;
            });
            return count[0];
        } catch (IOException failure) {
            throw new UncheckedIOException(to + " was not written: " + failure.getMessage(), failure);
        }
    }

    /** Passes the rows on and counts them. */
    private static final class Sink implements RowSink {
        private final RejectedRows rows;
        private long count;

        Sink(RejectedRows rows) {
            this.rows = rows;
        }

        @Override
        public void begin(String header) {
            try {
                rows.begin(header);
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        }

        @Override
        public void row(TableRow row) {
            try {
                if (row instanceof TableRow.Bad bad) {
                    rows.row(bad);
                    count++;
                }
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        }
    }
}
