package org.taperwright.workbench.ui;

import java.util.List;
import java.util.stream.Collectors;

/** The numbers behind a plot or table as text, for the clipboard and CSV files: headers with units, then rows. */
public record DataTable(List<String> headers, List<List<String>> rows) {
    public DataTable {
        headers = List.copyOf(headers);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** Comma-separated values by RFC 4180. */
    public String csv() {
        return lines(",", "\r\n");
    }

    /** Tab-separated lines, as spreadsheets take them from the clipboard. */
    public String tabbed() {
        return lines("\t", "\n");
    }

    private String lines(String comma, String end) {
        StringBuilder text = new StringBuilder(line(headers, comma)).append(end);
        rows.forEach(row -> text.append(line(row, comma)).append(end));
        return text.toString();
    }

    private static String line(List<String> cells, String comma) {
        return cells.stream().map(cell -> quoted(cell, comma)).collect(Collectors.joining(comma));
    }

    private static String quoted(String cell, String comma) {
        boolean plain = !cell.contains(comma) && !cell.contains("\"") && !cell.contains("\n") && !cell.contains("\r");
        return plain ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
    }
}
