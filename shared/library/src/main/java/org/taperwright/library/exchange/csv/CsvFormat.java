package org.taperwright.library.exchange.csv;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * How a table is written.
 *
 * @param charset its encoding
 * @param delimiter what stands between cells: a comma, a semicolon or a tab
 * @param decimal the sign before the decimals of a number: a point or a comma
 */
public record CsvFormat(Charset charset, char delimiter, char decimal) {
    /** As RFC 4180 has it, in UTF-8, with a decimal point. */
    public static final CsvFormat USUAL = new CsvFormat(StandardCharsets.UTF_8, ',', '.');

    /** The same with another encoding. */
    public CsvFormat in(Charset other) {
        return new CsvFormat(other, delimiter, decimal);
    }

    /** The delimiter in words. */
    public String delimiterWord() {
        return switch (delimiter) {
            case ',' -> "comma";
            case ';' -> "semicolon";
            case '\t' -> "tab";
            default -> "\"" + delimiter + '"';
        };
    }
}
