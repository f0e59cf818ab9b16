package org.taperwright.library.exchange.csv;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;

/**
 * Writes a table row by row. Lines end in a carriage return and a line feed, cells are quoted where they must be (RFC
 * 4180), and text that a spreadsheet would run as a formula is guarded; {@link CsvText} takes the guard away again.
 */
public final class CsvWriter {
    private final Appendable out;
    private final CsvFormat format;
    private boolean first = true;
    private boolean nothing = true;

    /** Writes to an appendable, which stays open. */
    public CsvWriter(Appendable out, CsvFormat format) {
        this.out = out;
        this.format = format;
    }

    /** A row of texts, such as the headings. */
    public void texts(List<String> row) throws IOException {
        for (String cell : row) {
            text(cell);
        }
        endRow();
    }

    /** A cell of text. */
    public CsvWriter text(String value) throws IOException {
        return cell(SpreadsheetText.guarded(value));
    }

    /** A cell with a number: the shortest decimal that reads back as the same double. */
    public CsvWriter number(double value) throws IOException {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite number: " + value);
        }
        boolean lessThanNothing = value == 0 && 1 / value < 0;
        return lessThanNothing ? cell("-0") : number(BigDecimal.valueOf(value));
    }

    /** A cell with an exact number. */
    public CsvWriter number(BigDecimal value) throws IOException {
        BigDecimal bare = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        boolean vast = Math.abs((long) bare.scale()) > 20;
        return cell((vast ? bare.toString() : bare.toPlainString()).replace('.', format.decimal()));
    }

    /** A cell with nothing in it. */
    public CsvWriter empty() throws IOException {
        return cell("");
    }

    /** Ends the row. One that holds nothing is told from an empty line by quotes. */
    public void endRow() throws IOException {
        out.append(nothing ? "\"\"\r\n" : "\r\n");
        first = true;
        nothing = true;
    }

    private CsvWriter cell(String text) throws IOException {
        if (!first) {
            out.append(format.delimiter());
        }
        nothing = first && text.isEmpty();
        first = false;
        if (mustBeQuoted(text)) {
            out.append('"').append(text.replace("\"", "\"\"")).append('"');
        } else {
            out.append(text);
        }
        return this;
    }

    private boolean mustBeQuoted(String text) {
        if (text.isEmpty()) {
            return false;
        }
        boolean padded =
                Character.isWhitespace(text.charAt(0)) || Character.isWhitespace(text.charAt(text.length() - 1));
        boolean sign = false;
        for (int i = 0; i < text.length() && !sign; i++) {
            char each = text.charAt(i);
            sign = each == format.delimiter()
                    || each == '"'
                    || each == '\n'
                    || each == '\r'
                    || each == ','
                    || each == ';';
        }
        return padded || sign || text.charAt(0) == '\uFEFF';
    }
}
