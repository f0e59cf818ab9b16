package org.taperwright.library.exchange.form;

import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/** How a value of one type stands in JSON. */
public interface Form<T> {
    /**
     * The value of a node, or empty when it has faults, which are then among the findings.
     *
     * @param node where the value stands
     * @param path the field's path for people, such as {@code taper[1].taper}
     * @param findings where faults go
     */
    Optional<T> read(Node node, String path, Findings findings);

    /**
     * The value that stands at a text read without a tree, and nothing beyond it; empty when it is not as it should be. The
     * text is then to be read again as a tree, for {@link #read} to say why. What this gives, that gives too.
     */
    Optional<T> straight(JsonTokens in);

    /** Writes a value. */
    void write(T value, JsonWriter out);

    /** The schema of such values: keywords of JSON Schema by name, as maps, lists, strings, numbers and booleans. */
    Map<String, Object> schema(Definitions definitions);
}
