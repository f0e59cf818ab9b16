package org.taperwright.library.exchange.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/** Numbers by names that are not fixed by the form, such as the parameters of a section family. */
record NumbersByNameForm(Form<Double> number, int most) implements Form<Map<String, Double>> {
    private static final String PATTERN = "[A-Za-z][A-Za-z0-9]{0,39}";
    private static final Pattern SHAPE = Pattern.compile(PATTERN);

    @Override
    public Optional<Map<String, Double>> read(Node node, String path, Findings findings) {
        if (!(node instanceof Node.ObjectNode object)) {
            findings.refuse(node, path, "expected an object of numbers by name {…}");
            return Optional.empty();
        }
        if (object.members().size() > most) {
            findings.refuse(
                    node.place(), path, "found " + object.members().size() + " numbers", "expected at most " + most);
            return Optional.empty();
        }
        Map<String, Double> values = new TreeMap<>();
        object.members().forEach((name, member) -> {
            if (!SHAPE.matcher(name).matches()) {
                findings.refuse(
                        member.namePlace(),
                        path + '.' + name,
                        "is no name of a parameter",
                        "expected letters and digits, at most 40");
            }
            number.read(member.value(), path + '.' + name, findings).ifPresent(value -> values.put(name, value));
        });
        return values.size() == object.members().size() ? Optional.of(values) : Optional.empty();
    }

    @Override
    public Optional<Map<String, Double>> straight(JsonTokens in) {
        if (!in.atObject()) {
            return Optional.empty();
        }
        Map<String, Double> values = new TreeMap<>();
        while (in.nextField()) {
            String name = in.name();
            Optional<Double> value = number.straight(in);
            if (value.isEmpty() || !SHAPE.matcher(name).matches() || values.put(name, value.get()) != null) {
                return Optional.empty();
            }
        }
        return values.size() <= most ? Optional.of(values) : Optional.empty();
    }

    @Override
    public void write(Map<String, Double> values, JsonWriter out) {
        out.beginObject(true);
        new TreeMap<>(values).forEach((name, value) -> {
            out.name(name);
            number.write(value, out);
        });
        out.endObject();
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> names = new LinkedHashMap<>();
        names.put("pattern", "^" + PATTERN + "$");
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("propertyNames", names);
        schema.put("additionalProperties", number.schema(definitions));
        schema.put("maxProperties", most);
        return schema;
    }
}
