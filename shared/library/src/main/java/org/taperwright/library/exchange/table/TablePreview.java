package org.taperwright.library.exchange.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.csv.CsvBeginning;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.csv.CsvLimits;
import org.taperwright.library.exchange.csv.CsvReader;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.library.exchange.text.TextSource;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/** How a table would be read, from its beginning alone: nothing is kept, and the rest of it is not looked at. */
public sealed interface TablePreview {
    /**
     * It can be read.
     *
     * @param format how it is written
     * @param mapping which column means which field: as kept for these headings, or as they suggest
     * @param rows its first rows as they would be read
     */
    record Shown(CsvFormat format, ColumnMapping mapping, List<TableRow> rows) implements TablePreview {
        public Shown {
            rows = List.copyOf(rows);
        }
    }

    /** It cannot be read; why. */
    record Refused(FileFault fault) implements TablePreview {}

    /**
     * Looks at a table.
     *
     * @param kind what its rows are
     * @param charset the encoding, where a person chose it; otherwise it has to be UTF-8
     * @param kept mappings kept from other tables
     * @param rows how many rows to show
     */
    static TablePreview of(
            TextSource source, TableKind kind, Optional<Charset> charset, ColumnMappings kept, Known known, int rows) {
        try (InputStream in = source.open()) {
            CsvBeginning.Seen seen = CsvBeginning.of(in, charset);
            if (seen instanceof CsvBeginning.Unreadable unreadable) {
                return new Refused(FileFault.of(source.name(), unreadable.fault()));
            }
            CsvFormat format = ((CsvBeginning.Written) seen).format();
            TableHeader.Found header = header(source, format);
            if (header instanceof TableHeader.Faulty faulty) {
                return new Refused(FileFault.of(source.name(), faulty.fault()));
            }
            List<String> headings = ((TableHeader.Read) header).header().headings();
            ColumnMapping mapping = kept.find(kind, headings).orElseGet(() -> ColumnMapping.guessed(kind, headings));
            return of(source, format, mapping, known, rows);
        } catch (IOException unreadable) {
            return new Refused(FileFault.of(source.name(), unreadable(unreadable)));
        }
    }

    /** Looks at a table as a person says it is written and mapped. */
    static TablePreview of(TextSource source, CsvFormat format, ColumnMapping mapping, Known known, int rows) {
        List<TableRow> shown = new ArrayList<>();
        RowSink sink = new RowSink() {
            @Override
            public void begin(String header) {
                shown.clear();
            }

            @Override
            public void row(TableRow row) {
                shown.add(row);
            }
        };
        TableOutcome outcome = new TableReading(source, format, known).read(mapping, sink, Progress.NONE, rows);
        return outcome instanceof TableOutcome.Refused refused
                ? new Refused(refused.fault())
                : new Shown(format, mapping, shown);
    }

    private static TableHeader.Found header(TextSource source, CsvFormat format) throws IOException {
        try (CsvReader reader = new CsvReader(source.open(), format.charset(), format.delimiter(), CsvLimits.USUAL)) {
            return TableHeader.of(reader.next());
        }
    }

    private static PlacedFault unreadable(IOException failure) {
        return new PlacedFault(
                Place.START,
                Fault.impossible("file", "cannot be read (" + failure.getMessage() + ")", "expected a readable file"));
    }
}
