package org.taperwright.library.exchange.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/** A whole number within limits, both included. */
record WholeNumberForm(int least, int most) implements Form<Integer> {
    @Override
    public Optional<Integer> read(Node node, String path, Findings findings) {
        Optional<Integer> whole = node instanceof Node.NumberNode number ? whole(number.value()) : Optional.empty();
        if (whole.isEmpty()) {
            findings.refuse(node, path, "expected a whole number from " + least + " to " + most);
        }
        return whole;
    }

    @Override
    public Optional<Integer> straight(JsonTokens in) {
        return whole(in.number());
    }

    private Optional<Integer> whole(double number) {
        return number == Math.rint(number) && number >= least && number <= most
                ? Optional.of((int) number)
                : Optional.empty();
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
