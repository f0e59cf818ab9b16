package org.taperwright.library.exchange.csv;

import java.io.IOException;
import org.taperwright.library.exchange.json.Place;

/** Where the reading of a row stands: an offset into its window, and the line and column of it. */
final class RowCursor {
    private final RowWindow window;
    private int offset;
    private int line;
    private int lineBegin;

    RowCursor(RowWindow window, int line) {
        this.window = window;
        this.line = line;
    }

    int offset() {
        return offset;
    }

    int sign() throws IOException {
        return window.at(offset);
    }

    Place place() {
        return new Place(line, offset - lineBegin + 1);
    }

    /** Goes on by one character, counting lines; the two of a line end count as one. */
    void step() throws IOException {
        int sign = window.at(offset);
        offset++;
        if (sign == '\n' || sign == '\r' && window.at(offset) != '\n') {
            line++;
            lineBegin = offset;
        }
    }

    /** Goes on by characters that are known to hold no line end. */
    void stepWithinLine(int count) {
        offset += count;
    }

    String textFrom(int from) {
        return window.text(from, offset);
    }

    RowWindow window() {
        return window;
    }

    /** Place of an offset among the characters known. */
    Place placeOf(int end) {
        int lines = line;
        int begin = 0;
        String text = window.text(0, end);
        for (int i = 0; i < end; i++) {
            char sign = text.charAt(i);
            if (sign == '\n' || sign == '\r' && (i + 1 == end || text.charAt(i + 1) != '\n')) {
                lines++;
                begin = i + 1;
            }
        }
        return new Place(lines, end - begin + 1);
    }
}
