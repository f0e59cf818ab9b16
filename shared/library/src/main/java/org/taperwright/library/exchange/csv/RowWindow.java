package org.taperwright.library.exchange.csv;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;

/**
 * The part of a text that holds the row being read, and no more than a row may have. Offsets count from the row's
 * beginning, so that a row found broken can be read again from its second line.
 */
final class RowWindow {
    /** Instead of a character: the text has ended. */
    static final int END = -1;

    /** Instead of a character: the row is longer than a row may be. */
    static final int TOO_LONG = -2;

    private static final int BLOCK = 1 << 15;

    private final Reader in;
    private final int most;
    private char[] buffer = new char[2 * BLOCK];
    private int begin;
    private int filled;
    private boolean ended;

    RowWindow(Reader in, int most) {
        this.in = in;
        this.most = most;
    }

    /** The character at an offset, or {@link #END} or {@link #TOO_LONG}. */
    int at(int offset) throws IOException {
        if (offset > most + 1) { // one more than a row, so that both characters of its end are seen
            return TOO_LONG;
        }
        if (begin + offset < filled) {
            return buffer[begin + offset];
        }
        return fill(offset) ? buffer[begin + offset] : END;
    }

    private boolean fill(int offset) throws IOException {
        while (begin + offset >= filled && !ended) {
            if (filled == buffer.length && begin > 0) {
                System.arraycopy(buffer, begin, buffer, 0, filled - begin);
                filled -= begin;
                begin = 0;
            } else if (filled == buffer.length) {
                buffer = Arrays.copyOf(buffer, Math.min(2 * buffer.length, Math.max(buffer.length, most) + BLOCK));
            }
            int count = in.read(buffer, filled, buffer.length - filled);
            ended = count < 0;
            filled += Math.max(0, count);
        }
        return begin + offset < filled;
    }

    /** Length of the line that begins at an offset, without its end; negative when it is too long. */
    int lineLength(int offset) throws IOException {
        int length = 0;
        while (true) {
            int sign = at(offset + length);
            if (sign == TOO_LONG) {
                return TOO_LONG;
            }
            if (sign == END || sign == '\n' || sign == '\r') {
                return length;
            }
            length++;
        }
    }

    /** Length of the line end at an offset: 2 for a carriage return with its line feed, 0 when there is none. */
    int endLength(int offset) throws IOException {
        int sign = at(offset);
        if (sign == '\r') {
            return at(offset + 1) == '\n' ? 2 : 1;
        }
        return sign == '\n' ? 1 : 0;
    }

    /** How many characters are known from the row's beginning on. */
    int known() {
        return filled - begin;
    }

    /** A part of the row. */
    String text(int from, int to) {
        return new String(buffer, begin + from, to - from);
    }

    /** The next row begins here. */
    void advance(int offset) {
        begin += offset;
    }
}
