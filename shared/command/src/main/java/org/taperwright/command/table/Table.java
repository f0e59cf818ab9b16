package org.taperwright.command.table;

import java.util.ArrayList;
import java.util.List;

/** A table of plain text: headings, a rule, rows. Columns stand two spaces apart; lines end without blanks. */
public final class Table {
    private static final String GAP = "  ";

    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();

    public Table(List<Column> columns) {
        this.columns = List.copyOf(columns);
    }

    /** A table of these columns. */
    public static Table of(Column... columns) {
        return new Table(List.of(columns));
    }

    /** Adds a row; one cell for each column. */
    public Table row(List<String> cells) {
        if (cells.size() != columns.size()) {
            throw new IllegalArgumentException(cells.size() + " cells for " + columns.size() + " columns");
        }
        rows.add(List.copyOf(cells));
        return this;
    }

    /** Adds a row; one cell for each column. */
    public Table row(String... cells) {
        return row(List.of(cells));
    }

    /** The table's lines. */
    public List<String> lines() {
        List<List<String>> laid = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            laid.add(column(i));
        }
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < laid.get(0).size(); line++) {
            StringBuilder text = new StringBuilder();
            for (List<String> column : laid) {
                text.append(text.isEmpty() ? "" : GAP).append(column.get(line));
            }
            lines.add(text.toString().stripTrailing());
        }
        return lines;
    }

    /** A column's lines, all of one width: headings, a rule, cells. */
    private List<String> column(int index) {
        Column column = columns.get(index);
        List<String> cells = rows.stream().map(row -> row.get(index)).toList();
        if (column.numbers()) {
            cells = alignedOnPoint(cells);
        }
        int width = 1;
        for (String cell : cells) {
            width = Math.max(width, cell.length());
        }
        for (String heading : column.headings()) {
            width = Math.max(width, heading.length());
        }
        int headingLines =
                columns.stream().mapToInt(c -> c.headings().size()).max().orElse(0);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < headingLines; i++) {
            String heading = i < column.headings().size() ? column.headings().get(i) : "";
            lines.add(padded(heading, width, column.numbers()));
        }
        lines.add("-".repeat(width));
        for (String cell : cells) {
            lines.add(padded(cell, width, column.numbers()));
        }
        return lines;
    }

    private static List<String> alignedOnPoint(List<String> cells) {
        int after = 0;
        for (String cell : cells) {
            after = Math.max(after, afterPoint(cell));
        }
        List<String> aligned = new ArrayList<>();
        for (String cell : cells) {
            aligned.add(cell + " ".repeat(after - afterPoint(cell)));
        }
        return aligned;
    }

    /** Characters from the decimal point on. */
    private static int afterPoint(String cell) {
        int point = cell.indexOf('.');
        return point < 0 ? 0 : cell.length() - point;
    }

    private static String padded(String text, int width, boolean right) {
        String blanks = " ".repeat(width - text.length());
        return right ? blanks + text : text + blanks;
    }
}
