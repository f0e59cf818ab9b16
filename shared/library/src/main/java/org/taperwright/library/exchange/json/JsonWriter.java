package org.taperwright.library.exchange.json;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;

/**
 * Writes JSON with a fixed layout, so that equal things have equal text: two spaces a level, line feeds, short objects
 * on one line, numbers without needless zeros or exponents.
 */
public final class JsonWriter {
    private final StringBuilder text = new StringBuilder();
    private int depth;
    private int inlineDepth;
    private boolean first = true;
    private boolean named;
    private final boolean finiteOnly;

    /** A writer that refuses numbers which are not finite, as JSON does. */
    public JsonWriter() {
        this(true);
    }

    private JsonWriter(boolean finiteOnly) {
        this.finiteOnly = finiteOnly;
    }

    /** A writer whose text is only read again to find what in it could not be kept. */
    public static JsonWriter lettingThroughWhatIsNotFinite() {
        return new JsonWriter(false);
    }

    /** Opens an object; on one line if asked or if what holds it is on one line. */
    public JsonWriter beginObject(boolean inline) {
        return begin('{', inline);
    }

    /** Closes the object opened last. */
    public JsonWriter endObject() {
        return end('}');
    }

    /** Opens a list. */
    public JsonWriter beginList(boolean inline) {
        return begin('[', inline);
    }

    /** Closes the list opened last. */
    public JsonWriter endList() {
        return end(']');
    }

    /** Names the value that follows. */
    public JsonWriter name(String name) {
        separate();
        quote(name);
        text.append(": ");
        named = true;
        return this;
    }

    /** A string. */
    public JsonWriter text(String value) {
        separate();
        quote(value);
        return this;
    }

    /** A number; one that is not finite cannot be written as JSON. */
    public JsonWriter number(double value) {
        if (finiteOnly && !Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite number: " + value);
        }
        separate();
        text.append(plain(value));
        return this;
    }

    /** True or false. */
    public JsonWriter flag(boolean value) {
        separate();
        text.append(value);
        return this;
    }

    /** The text so far, ending in a line feed. */
    public String finished() {
        return text + "\n";
    }

    /** Hands over the text so far and goes on after it. */
    public void drainTo(Appendable out) {
        try {
            // the last sign stays, for what comes next is laid out after it
            int end = Math.max(0, text.length() - 1);
            out.append(text, 0, end);
            text.delete(0, end);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private JsonWriter begin(char bracket, boolean inline) {
        separate();
        text.append(bracket);
        depth++;
        if (inline || inlineDepth > 0) {
            inlineDepth++;
        }
        first = true;
        return this;
    }

    private JsonWriter end(char bracket) {
        depth--;
        boolean empty = first;
        if (inlineDepth > 0) {
            text.append(empty || bracket == ']' ? "" : " ");
            inlineDepth--;
        } else if (!empty) {
            newLine();
        }
        text.append(bracket);
        first = false;
        return this;
    }

    /** What stands between the value before and the one to come. */
    private void separate() {
        if (named) {
            named = false;
            return;
        }
        if (!first) {
            text.append(',');
        }
        if (inlineDepth > 0) {
            boolean afterListBracket = first && text.charAt(text.length() - 1) == '[';
            text.append(afterListBracket ? "" : " ");
        } else if (depth > 0) {
            newLine();
        }
        first = false;
    }

    private void newLine() {
        text.append('\n').append("  ".repeat(depth));
    }

    private void quote(String value) {
        text.append('"')
                .append(JsonStringEncoder.getInstance().quoteAsString(value))
                .append('"');
    }

    /** The shortest decimal that reads back as the same double, without an exponent where that stays short. */
    private static String plain(double value) {
        if (value == 0) {
            return 1 / value < 0 ? "-0" : "0";
        }
        double size = Math.abs(value);
        if (!Double.isFinite(value) || size < 1e-6 || size >= 1e15) {
            return Double.toString(value);
        }
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
