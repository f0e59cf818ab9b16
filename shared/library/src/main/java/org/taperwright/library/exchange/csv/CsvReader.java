package org.taperwright.library.exchange.csv;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.library.exchange.text.DecodedText;
import org.taperwright.library.exchange.text.UnreadableBytes;
import org.taperwright.mechanics.work.Fault;

/**
 * Reads a table row by row, holding one row at a time. A quote that never closes, or text after a closing one, costs the
 * line where the row began and no more: reading goes on with the line after it. Empty lines are passed over.
 *
 * <p>Source: RFC 4180. A quote inside a bare cell, which the RFC leaves open, is taken as it stands.
 */
public final class CsvReader implements Closeable {
    private final Reader in;
    private final char delimiter;
    private final CsvLimits limits;
    private final RowWindow window;
    private int line = 1;
    private long rows;
    private boolean over;

    /** Reads decoded text. */
    public CsvReader(Reader in, char delimiter, CsvLimits limits) {
        this.in = in;
        this.delimiter = delimiter;
        this.limits = limits;
        this.window = new RowWindow(in, limits.rowCharacters());
    }

    /** Reads bytes in an encoding; those it does not know are refused, named by their number. */
    public CsvReader(InputStream in, Charset charset, char delimiter, CsvLimits limits) {
        this(new DecodedText(in, charset), delimiter, limits);
    }

    /** The next row; empty after the last, or after a refusal. */
    public Optional<CsvRow> next() {
        if (over) {
            return Optional.empty();
        }
        Optional<CsvRow> row = read();
        over = row.isEmpty() || row.get() instanceof CsvRow.Refused;
        return row;
    }

    private Optional<CsvRow> read() {
        try {
            passEmptyLines();
            if (window.at(0) == RowWindow.END) {
                return Optional.empty();
            }
            rows++;
            return Optional.of(rows > limits.rows() ? tooMany() : row());
        } catch (UnreadableBytes unreadable) {
            Place place = new RowCursor(window, line).placeOf(window.known());
            return Optional.of(refused(
                    place,
                    "holds bytes that are not of the encoding, first byte " + unreadable.position(),
                    "expected UTF-8, or another encoding to be chosen"));
        } catch (IOException unreadable) {
            return Optional.of(refused(
                    new Place(line, 1),
                    "cannot be read (" + unreadable.getMessage() + ")",
                    "expected a readable file"));
        }
    }

    private void passEmptyLines() throws IOException {
        for (int end = window.endLength(0); end > 0; end = window.endLength(0)) {
            window.advance(end);
            line++;
        }
    }

    private CsvRow row() throws IOException {
        RowCursor cursor = new RowCursor(window, line);
        List<CsvCell> cells = new ArrayList<>();
        while (true) {
            CellScan.Found found = CellScan.at(cursor, delimiter, limits.cellCharacters());
            if (found instanceof CellScan.Faulty faulty) {
                return broken(faulty.fault());
            }
            cells.add(((CellScan.Read) found).cell());
            if (cursor.sign() == RowWindow.TOO_LONG) {
                return broken(new PlacedFault(
                        cursor.place(),
                        Fault.impossible(
                                "row",
                                "is longer than " + limits.rowCharacters() + " characters",
                                "expected a shorter row")));
            }
            if (cursor.sign() != delimiter) {
                return whole(cursor, cells);
            }
            if (cells.size() == limits.cells()) {
                return broken(new PlacedFault(
                        cursor.place(),
                        Fault.impossible(
                                "row",
                                "holds more than " + limits.cells() + " cells",
                                "expected fewer, or another delimiter")));
            }
            cursor.step();
        }
    }

    private CsvRow whole(RowCursor cursor, List<CsvCell> cells) throws IOException {
        CsvRow row = new CsvRow.Whole(new Place(line, 1), cells, window.text(0, cursor.offset()));
        int end = window.endLength(cursor.offset());
        line = cursor.place().line() + (end > 0 ? 1 : 0);
        window.advance(cursor.offset() + end);
        return row;
    }

    /** Gives up on the line where the row began and goes on with the one after it. */
    private CsvRow broken(PlacedFault fault) throws IOException {
        int length = window.lineLength(0);
        if (length < 0) {
            return refused(
                    new Place(line, 1),
                    "holds a line of more than " + limits.rowCharacters() + " characters",
                    "expected a table of shorter lines");
        }
        String verbatim = window.text(0, length);
        int end = window.endLength(length);
        window.advance(length + end);
        line += end > 0 ? 1 : 0;
        return new CsvRow.Broken(fault, verbatim);
    }

    private CsvRow tooMany() {
        return refused(
                new Place(line, 1), "holds more than " + limits.rows() + " rows", "expected fewer: split the file");
    }

    private static CsvRow refused(Place place, String what, String expected) {
        return new CsvRow.Refused(new PlacedFault(place, Fault.impossible("file", what, expected)));
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
