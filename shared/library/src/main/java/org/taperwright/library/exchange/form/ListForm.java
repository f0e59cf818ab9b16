package org.taperwright.library.exchange.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/** A list with a least and greatest number of items, all of one form. */
record ListForm<T>(Form<T> item, int fewest, int most) implements Form<List<T>> {
    /** Most lists are short. */
    private static final int FEW = 4;

    @Override
    public Optional<List<T>> read(Node node, String path, Findings findings) {
        if (!(node instanceof Node.ArrayNode array)) {
            findings.refuse(node, path, "expected a list […]");
            return Optional.empty();
        }
        int count = array.items().size();
        if (count < fewest || count > most) {
            findings.refuse(
                    node.place(),
                    path,
                    "found a list of " + count,
                    "expected " + (most == Integer.MAX_VALUE ? "at least " + fewest : fewest + " to " + most));
            return Optional.empty();
        }
        List<T> values = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            item.read(array.items().get(i), path + '[' + i + ']', findings).ifPresent(values::add);
        }
        return values.size() == count ? Optional.of(values) : Optional.empty();
    }

    @Override
    public Optional<List<T>> straight(JsonTokens in) {
        if (!in.atList()) {
            return Optional.empty();
        }
        List<T> values = new ArrayList<>(FEW);
        while (in.nextItem()) {
            Optional<T> value = item.straight(in);
            if (value.isEmpty()) {
                return Optional.empty();
            }
            values.add(value.get());
        }
        return values.size() >= fewest && values.size() <= most ? Optional.of(values) : Optional.empty();
    }

    @Override
    public void write(List<T> values, JsonWriter out) {
        out.beginList(false);
        values.forEach(value -> item.write(value, out));
        out.endList();
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "array");
        schema.put("items", item.schema(definitions));
        if (fewest > 0) {
            schema.put("minItems", fewest);
        }
        if (most < Integer.MAX_VALUE) {
            schema.put("maxItems", most);
        }
        return schema;
    }
}
