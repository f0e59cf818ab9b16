package org.taperwright.library.exchange.csv;

import java.io.StringReader;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Guesses how a table is written from how it begins. */
final class CsvGuess {
    private static final char[] DELIMITERS = {',', ';', '\t'};
    private static final int ROWS = 40;
    private static final Pattern WITH_POINT = Pattern.compile("[+-]?\\d*\\.\\d+( .*)?");
    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?\\d*,\\d+( .*)?");

    private CsvGuess() {}

    /** The format of a table that begins with a text. */
    static CsvFormat of(String beginning, Charset charset) {
        char best = ',';
        long most = 0;
        for (char delimiter : DELIMITERS) {
            long score = score(rows(beginning, delimiter));
            if (score > most) {
                most = score;
                best = delimiter;
            }
        }
        return new CsvFormat(charset, best, decimal(rows(beginning, best), best));
    }

    /** How many rows have as many cells as the first, and then how many cells that is; nothing for a single column. */
    private static long score(List<CsvRow.Whole> rows) {
        if (rows.isEmpty() || rows.get(0).cells().size() < 2) {
            return 0;
        }
        int cells = rows.get(0).cells().size();
        long alike = rows.stream().filter(row -> row.cells().size() == cells).count();
        return 1000 * alike + cells;
    }

    /** A comma only where it cannot be the delimiter, and unless the numbers have points and none has a comma. */
    private static char decimal(List<CsvRow.Whole> rows, char delimiter) {
        if (delimiter == ',') {
            return '.';
        }
        boolean commas = any(rows, WITH_COMMA);
        boolean points = any(rows, WITH_POINT);
        return commas || !points && delimiter == ';' ? ',' : '.';
    }

    private static boolean any(List<CsvRow.Whole> rows, Pattern number) {
        return rows.stream()
                .skip(1)
                .flatMap(row -> row.cells().stream())
                .anyMatch(cell -> number.matcher(cell.text().strip()).matches());
    }

    private static List<CsvRow.Whole> rows(String beginning, char delimiter) {
        CsvReader reader = new CsvReader(new StringReader(beginning), delimiter, CsvLimits.USUAL);
        List<CsvRow.Whole> rows = new ArrayList<>();
        Optional<CsvRow> row = reader.next();
        for (int read = 0; row.isPresent() && read < ROWS; read++) {
            if (row.get() instanceof CsvRow.Whole whole) {
                rows.add(whole);
            }
            row = reader.next();
        }
        return rows;
    }
}
