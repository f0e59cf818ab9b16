package org.taperwright.library.exchange.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.csv.CsvLimits;
import org.taperwright.library.exchange.csv.CsvReader;
import org.taperwright.library.exchange.csv.CsvRow;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.library.exchange.text.CountedInput;
import org.taperwright.library.exchange.text.TextSource;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/**
 * Reads a table row by row with a mapping, holding one row at a time.
 *
 * @param source the table
 * @param format how it is written
 * @param known what the library holds
 * @param limits how much it may hold
 */
public record TableReading(TextSource source, CsvFormat format, Known known, CsvLimits limits) {
    private static final int ROWS_BETWEEN_REPORTS = 256;

    /** A reading with the usual limits. */
    public TableReading(TextSource source, CsvFormat format, Known known) {
        this(source, format, known, CsvLimits.USUAL);
    }

    /**
     * Reads the whole table.
     *
     * @param mapping which column means which field; a table with other headings is refused
     * @throws org.taperwright.mechanics.work.WorkCancelled when the progress says so
     */
    public TableOutcome read(ColumnMapping mapping, RowSink sink, Progress progress) {
        return read(mapping, sink, progress, Long.MAX_VALUE);
    }

    /** As {@link #read(ColumnMapping, RowSink, Progress)}, ending after so many rows. */
    TableOutcome read(ColumnMapping mapping, RowSink sink, Progress progress, long most) {
        try (CountedInput in = new CountedInput(source.open());
                CsvReader reader = new CsvReader(in, format.charset(), format.delimiter(), limits)) {
            TableHeader.Found found = TableHeader.of(reader.next());
            if (found instanceof TableHeader.Faulty faulty) {
                return refused(faulty.fault(), 0, 0);
            }
            TableHeader header = ((TableHeader.Read) found).header();
            Optional<PlacedFault> unfit = unfit(mapping, header);
            if (unfit.isPresent()) {
                return refused(unfit.get(), 0, 0);
            }
            sink.begin(header.verbatim());
            RowReading rows = new RowReading(source.name(), mapping.kind(), readings(mapping), known);
            Pass pass = new Pass(reader, header, rows, sink, progress, in);
            return pass.run(most);
        } catch (IOException unreadable) {
            return refused(
                    new PlacedFault(
                            Place.START,
                            Fault.impossible(
                                    "file",
                                    "cannot be read (" + unreadable.getMessage() + ")",
                                    "expected a readable file")),
                    0,
                    0);
        }
    }

    private static Optional<PlacedFault> unfit(ColumnMapping mapping, TableHeader header) {
        if (!mapping.fits(header.headings())) {
            return Optional.of(new PlacedFault(
                    Place.START,
                    Fault.impossible(
                            "headings",
                            "are not those of the mapping",
                            "expected "
                                    + String.join(
                                            ", ",
                                            mapping.columns().stream()
                                                    .map(MappedColumn::heading)
                                                    .toList()))));
        }
        return mapping.meansSomething()
                ? Optional.empty()
                : Optional.of(new PlacedFault(
                        Place.START,
                        Fault.impossible(
                                "headings",
                                "name no field of "
                                        + mapping.kind().thing().heading().toLowerCase(Locale.ROOT),
                                "expected some of "
                                        + String.join(", ", mapping.kind().fieldNames()))));
    }

    private List<Optional<CellReading>> readings(ColumnMapping mapping) {
        List<Optional<CellReading>> readings = new ArrayList<>();
        for (MappedColumn column : mapping.columns()) {
            readings.add(column.field()
                    .flatMap(mapping.kind()::field)
                    .map(field -> new CellReading(field, column.unit(), format.decimal())));
        }
        return readings;
    }

    private TableOutcome refused(PlacedFault fault, long good, long bad) {
        return new TableOutcome.Refused(FileFault.of(source.name(), fault), good, bad);
    }

    /** One pass over the rows. */
    private final class Pass {
        private final CsvReader reader;
        private final TableHeader header;
        private final RowReading rows;
        private final RowSink sink;
        private final Progress progress;
        private final CountedInput in;
        private long good;
        private long bad;

        Pass(CsvReader reader, TableHeader header, RowReading rows, RowSink sink, Progress progress, CountedInput in) {
            this.reader = reader;
            this.header = header;
            this.rows = rows;
            this.sink = sink;
            this.progress = progress;
            this.in = in;
        }

        TableOutcome run(long most) {
            Optional<CsvRow> row = reader.next();
            for (long read = 0; row.isPresent() && read < most; read++) {
                if (read % ROWS_BETWEEN_REPORTS == 0) {
                    in.report(source, progress);
                }
                if (row.get() instanceof CsvRow.Refused refusal) {
                    return refused(refusal.fault(), good, bad);
                }
                one(row.get());
                row = reader.next();
            }
            return new TableOutcome.Done(good, bad);
        }

        private void one(CsvRow row) {
            if (row instanceof CsvRow.Broken broken) {
                take(new TableRow.Bad(
                        broken.fault().place().line(),
                        broken.verbatim(),
                        List.of(FileFault.of(source.name(), broken.fault()))));
            } else if (row instanceof CsvRow.Whole whole
                    && !header.stripped(whole).blank()) {
                take(rows.read(header.stripped(whole)));
            }
        }

        private void take(TableRow row) {
            if (row instanceof TableRow.Good) {
                good++;
            } else {
                bad++;
            }
            sink.row(row);
        }
    }
}
