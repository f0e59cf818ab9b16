package org.taperwright.library.exchange.csv;

import java.io.IOException;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.mechanics.work.Fault;

/** Reads one cell: after it the cursor stands at a delimiter, a line end or the text's end. */
final class CellScan {
    /** What came of reading a cell. */
    sealed interface Found {}

    record Read(CsvCell cell) implements Found {}

    record Faulty(PlacedFault fault) implements Found {}

    private CellScan() {}

    static Found at(RowCursor cursor, char delimiter, int most) throws IOException {
        return cursor.sign() == '"' ? quoted(cursor, delimiter, most) : bare(cursor, delimiter, most);
    }

    private static Found bare(RowCursor cursor, char delimiter, int most) throws IOException {
        Place place = cursor.place();
        int from = cursor.offset();
        RowWindow window = cursor.window();
        int length = 0;
        for (int sign = window.at(from); sign >= 0 && !ends(sign, delimiter); sign = window.at(from + length)) {
            length++;
            if (length > most) {
                return tooLong(place, most);
            }
        }
        cursor.stepWithinLine(length);
        if (cursor.sign() == RowWindow.TOO_LONG) {
            return tooLong(place, most);
        }
        return new Read(new CsvCell(place, cursor.textFrom(from), false));
    }

    private static Found quoted(RowCursor cursor, char delimiter, int most) throws IOException {
        Place place = cursor.place();
        cursor.step();
        int from = cursor.offset();
        boolean doubled = false;
        while (true) {
            int sign = cursor.sign();
            if (sign < 0) {
                return faulty(place, "opens a double quote that never closes", "expected a closing double quote");
            }
            if (cursor.offset() - from > most) {
                return tooLong(place, most);
            }
            cursor.step();
            if (sign != '"') {
                continue;
            }
            if (cursor.sign() != '"') {
                break;
            }
            doubled = true;
            cursor.step();
        }
        int after = cursor.sign();
        if (after >= 0 && !ends(after, delimiter)) {
            return faulty(
                    cursor.place(),
                    "has text after its closing double quote",
                    "expected a delimiter or the line's end; a quote within quotes is doubled");
        }
        String text = cursor.window().text(from, cursor.offset() - 1);
        return new Read(new CsvCell(place, doubled ? text.replace("\"\"", "\"") : text, true));
    }

    private static boolean ends(int sign, char delimiter) {
        return sign == delimiter || sign == '\n' || sign == '\r';
    }

    private static Found tooLong(Place place, int most) {
        return faulty(place, "is longer than " + most + " characters", "expected a shorter cell");
    }

    private static Found faulty(Place place, String what, String expected) {
        return new Faulty(new PlacedFault(place, Fault.impossible("cell", what, expected)));
    }
}
