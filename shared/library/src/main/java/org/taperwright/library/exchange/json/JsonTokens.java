package org.taperwright.library.exchange.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Function;

/**
 * A text read value by value, without a tree: for texts that are expected to be good, such as those out of the store. It
 * tells only that something is wrong, not what; that is for {@link JsonText}. Whoever reads stops at the first value that
 * is not what was expected.
 */
public final class JsonTokens {
    private final JsonParser parser;
    private final Limits limits;
    private JsonToken token = JsonToken.NOT_AVAILABLE;
    private int values;
    /** Once broken a text stays so: the parser itself would go on after the fault. */
    private boolean broken;

    private JsonTokens(JsonParser parser, Limits limits) {
        this.parser = parser;
        this.limits = limits;
    }

    /** What the reading makes of a whole text; empty when it makes nothing of it, or when the text is not good. */
    public static <T> Optional<T> read(String text, Limits limits, Function<JsonTokens, Optional<T>> reading) {
        if (text.length() > limits.characters()) {
            return Optional.empty();
        }
        try (JsonParser parser = JsonText.usual(limits).createParser(text)) {
            JsonTokens tokens = new JsonTokens(parser, limits);
            Optional<T> read = tokens.next() ? reading.apply(tokens) : Optional.empty();
            return read.isPresent() && !tokens.broken && parser.nextToken() == null ? read : Optional.empty();
        } catch (IOException malformed) {
            return Optional.empty();
        }
    }

    /** Whether an object begins here. */
    public boolean atObject() {
        return token == JsonToken.START_OBJECT;
    }

    /** Goes to the next field of the object and its value; false at the object's end. */
    public boolean nextField() {
        return next() && token == JsonToken.FIELD_NAME && next();
    }

    /** The name of the field whose value stands here. */
    public String name() {
        try {
            return String.valueOf(parser.currentName());
        } catch (IOException malformed) {
            return stop();
        }
    }

    /** Whether a list begins here. */
    public boolean atList() {
        return token == JsonToken.START_ARRAY;
    }

    /** Goes to the next item of the list; false at the list's end. */
    public boolean nextItem() {
        return next() && token != JsonToken.END_ARRAY;
    }

    /** Whether a string stands here. */
    public boolean atText() {
        return token == JsonToken.VALUE_STRING;
    }

    /** The string here. */
    public String text() {
        try {
            return parser.getText();
        } catch (IOException malformed) {
            return stop();
        }
    }

    /** The number here, its nearest double; not a number where none stands. */
    public double number() {
        try {
            if (token == JsonToken.VALUE_NUMBER_INT) {
                double value = parser.getDoubleValue();
                return value == 0 && parser.getText().charAt(0) == '-' ? -0.0 : value;
            }
            return token == JsonToken.VALUE_NUMBER_FLOAT ? parser.getDoubleValue() : Double.NaN;
        } catch (IOException malformed) {
            stop();
            return Double.NaN;
        }
    }

    /** True or false, if one of them stands here. */
    public Optional<Boolean> flag() {
        return switch (token) {
            case VALUE_TRUE -> Optional.of(true);
            case VALUE_FALSE -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    private boolean next() {
        if (broken) {
            return false;
        }
        try {
            JsonToken found = parser.nextToken();
            values++;
            if (found == null || values > limits.values()) {
                stop();
            } else {
                token = found;
            }
        } catch (IOException malformed) {
            stop();
        }
        return !broken;
    }

    /** Nothing further is read: what was malformed here is said by whoever reads the text as a tree. */
    private String stop() {
        broken = true;
        token = JsonToken.NOT_AVAILABLE;
        return "";
    }
}
