package org.taperwright.library.exchange.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/** True or false. */
record FlagForm() implements Form<Boolean> {
    @Override
    public Optional<Boolean> read(Node node, String path, Findings findings) {
        if (node instanceof Node.FlagNode flag) {
            return Optional.of(flag.value());
        }
        findings.refuse(node, path, "expected true or false");
        return Optional.empty();
    }

    @Override
    public Optional<Boolean> straight(JsonTokens in) {
        return in.flag();
    }

    @Override
    public void write(Boolean value, JsonWriter out) {
        out.flag(value);
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "boolean");
        return schema;
    }
}
