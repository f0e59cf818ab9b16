package org.taperwright.library.exchange.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/**
 * A value written as text of a fixed shape.
 *
 * @param pattern the shape, in the part of regular expressions that Java and JSON Schema read alike
 * @param expected what fits, for people
 * @param made the value of a text of that shape; empty when there is none, as for the 30th of February
 * @param written the text of a value
 */
record PatternForm<T>(Pattern pattern, String expected, Function<String, Optional<T>> made, Function<T, String> written)
        implements Form<T> {
    @Override
    public Optional<T> read(Node node, String path, Findings findings) {
        Optional<T> value = node instanceof Node.TextNode text ? value(text.value()) : Optional.empty();
        if (value.isEmpty()) {
            findings.refuse(node, path, "expected " + expected + ", in double quotes");
        }
        return value;
    }

    @Override
    public Optional<T> straight(JsonTokens in) {
        return in.atText() ? value(in.text()) : Optional.empty();
    }

    private Optional<T> value(String text) {
        return pattern.matcher(text).matches() ? made.apply(text) : Optional.empty();
    }

    @Override
    public void write(T value, JsonWriter out) {
        out.text(written.apply(value));
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        schema.put("pattern", "^" + pattern + "$");
        return schema;
    }
}
