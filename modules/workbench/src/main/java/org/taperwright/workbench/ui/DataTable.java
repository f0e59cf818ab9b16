package org.taperwright.workbench.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.csv.CsvWriter;

/** The numbers behind a plot or table as text, for the clipboard and CSV files: headers with units, then rows. */
public record DataTable(List<String> headers, List<List<String>> rows) {
    public DataTable {
        headers = List.copyOf(headers);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** Comma-separated values by RFC 4180; text that a spreadsheet would run as a formula is guarded. */
    public String csv() {
        StringBuilder text = new StringBuilder();
        CsvWriter out = new CsvWriter(text, CsvFormat.USUAL);
        try {
            out.texts(headers);
            for (List<String> row : rows) {
                out.texts(row);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException("writing to memory failed", fault);
        }
        return text.toString();
    }

    /** Tab-separated lines, as spreadsheets take them from the clipboard. */
    public String tabbed() {
        StringBuilder text = new StringBuilder(line(headers)).append('\n');
        rows.forEach(row -> text.append(line(row)).append('\n'));
        return text.toString();
    }

    private static String line(List<String> cells) {
        return cells.stream().map(DataTable::quoted).collect(Collectors.joining("\t"));
    }

    private static String quoted(String cell) {
        boolean plain = !cell.contains("\t") && !cell.contains("\"") && !cell.contains("\n") && !cell.contains("\r");
        return plain ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
    }
}
