package org.taperwright.library.exchange.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/** A whole number within limits, both included. */
record WholeNumberForm(int least, int most) implements Form<Integer> {
    @Override
    public Optional<Integer> read(Node node, String path, Findings findings) {
        boolean fits = node instanceof Node.NumberNode number
                && number.value() == Math.rint(number.value())
                && number.value() >= least
                && number.value() <= most;
        if (!fits) {
            findings.refuse(node, path, "expected a whole number from " + least + " to " + most);
            return Optional.empty();
        }
        return Optional.of((int) ((Node.NumberNode) node).value());
    }

    @Override
    public void write(Integer value, JsonWriter out) {
        out.number(value);
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "integer");
        schema.put("minimum", least);
        schema.put("maximum", most);
        return schema;
    }
}
