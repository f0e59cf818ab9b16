package org.taperwright.library.exchange.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** The schema parts that a schema refers to by name, its {@code $defs}. */
public final class Definitions {
    private final Map<String, Object> parts = new LinkedHashMap<>();

    /** A reference to a part, which is described on first use. */
    public Map<String, Object> reference(String name, Supplier<Map<String, Object>> description) {
        if (!parts.containsKey(name)) {
            parts.put(name, Map.of());
            parts.put(name, description.get());
        }
        Map<String, Object> reference = new LinkedHashMap<>();
        reference.put("$ref", "#/$defs/" + name);
        return reference;
    }

    /** All parts described so far. */
    public Map<String, Object> parts() {
        return parts;
    }
}
