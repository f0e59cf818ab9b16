package org.taperwright.library.exchange.form;

import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/** A value that may be absent: when it is, its field is left out, never null. */
record PresentForm<T>(Form<T> form) implements Form<Optional<T>> {
    @Override
    public Optional<Optional<T>> read(Node node, String path, Findings findings) {
        return form.read(node, path, findings).map(Optional::of);
    }

    @Override
    public Optional<Optional<T>> straight(JsonTokens in) {
        return form.straight(in).map(Optional::of);
    }

    @Override
    public void write(Optional<T> value, JsonWriter out) {
        form.write(value.orElseThrow(), out);
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        return form.schema(definitions);
    }
}
