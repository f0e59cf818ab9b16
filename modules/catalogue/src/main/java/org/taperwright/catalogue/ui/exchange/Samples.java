package org.taperwright.catalogue.ui.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.taperwright.library.exchange.csv.CsvCell;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.csv.CsvLimits;
import org.taperwright.library.exchange.csv.CsvReader;
import org.taperwright.library.exchange.csv.CsvRow;
import org.taperwright.library.exchange.table.ColumnMapping;
import org.taperwright.library.exchange.text.TextSource;

/**
 * How a table begins, as it is written: its headings and the first cells beneath them.
 *
 * @param headings the headings
 * @param rows the first rows
 */
record Samples(List<String> headings, List<List<String>> rows) {
    private static final int ROWS = 3;

    /** Reads the beginning of a table; a row that is broken there is passed over. */
    static Samples of(TextSource source, CsvFormat format) {
        List<List<String>> rows = new ArrayList<>();
        try (CsvReader reader = new CsvReader(source.open(), format.charset(), format.delimiter(), CsvLimits.USUAL)) {
            Optional<CsvRow> row = reader.next();
            while (row.isPresent() && rows.size() <= ROWS && !(row.get() instanceof CsvRow.Refused)) {
                if (row.get() instanceof CsvRow.Whole whole) {
                    rows.add(whole.cells().stream().map(CsvCell::text).toList());
                }
                row = reader.next();
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return rows.isEmpty()
                ? new Samples(List.of(), List.of())
                : new Samples(rows.get(0), rows.subList(1, rows.size()));
    }

    /** The first cells of each column of a mapping. */
    List<String> of(ColumnMapping mapping) {
        return mapping.columns().stream()
                .map(column -> headings.indexOf(column.heading()))
                .map(place -> place < 0
                        ? ""
                        : rows.stream()
                                .filter(row -> place < row.size())
                                .map(row -> row.get(place))
                                .collect(Collectors.joining(" | ")))
                .toList();
    }
}
