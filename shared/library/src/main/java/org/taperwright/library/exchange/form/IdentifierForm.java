package org.taperwright.library.exchange.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/** An identifier: letters, digits, dots and hyphens, 1 to 80 characters, beginning with a letter or digit. */
record IdentifierForm<T>(Function<String, T> made, Function<T, String> written) implements Form<T> {
    private static final String PATTERN = "[A-Za-z0-9][A-Za-z0-9.-]{0,79}";
    private static final Pattern SHAPE = Pattern.compile(PATTERN);

    @Override
    public Optional<T> read(Node node, String path, Findings findings) {
        if (node instanceof Node.TextNode text && SHAPE.matcher(text.value()).matches()) {
            return Optional.of(made.apply(text.value()));
        }
        findings.refuse(
                node, path, "expected an identifier: letters, digits, dots and hyphens, at most 80, in double quotes");
        return Optional.empty();
    }

    @Override
    public void write(T value, JsonWriter out) {
        out.text(written.apply(value));
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        schema.put("pattern", "^" + PATTERN + "$");
        return schema;
    }
}
