package org.taperwright.library.exchange.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.Spelling;

/**
 * A record as an object with named fields.
 *
 * @param name the record's name in the schema, lowerCamelCase
 * @param explanation one sentence for the schema
 * @param inline whether the object is short enough for one line
 * @param fields in the order they are written
 * @param made makes the record; an {@link IllegalArgumentException} of its constructor becomes a fault
 */
public record RecordForm<R>(
        String name, String explanation, boolean inline, List<Field<R, ?>> fields, Function<FieldValues, R> made)
        implements Form<R> {
    public RecordForm {
        fields = List.copyOf(fields);
    }

    @Override
    public Optional<R> read(Node node, String path, Findings findings) {
        return read(node, path, Set.of(), findings);
    }

    /** As {@link #read}, where fields of the surroundings, read elsewhere, may stand in the same object. */
    public Optional<R> read(Node node, String path, Set<String> elsewhere, Findings findings) {
        if (!(node instanceof Node.ObjectNode object)) {
            findings.refuse(node, path.isEmpty() ? "file" : path, "expected an object {…}");
            return Optional.empty();
        }
        Set<String> misspelt = new HashSet<>(0);
        boolean known = onlyKnown(object, path, elsewhere, misspelt, findings);
        FieldValues values = new FieldValues(fields);
        for (int i = 0; i < fields.size(); i++) {
            values.put(i, value(fields.get(i), object, path, misspelt, findings));
        }
        if (!known || !values.complete()) {
            return Optional.empty();
        }
        try {
            return Optional.of(made.apply(values));
        } catch (IllegalArgumentException refused) {
            findings.refuse(
                    node.place(),
                    path.isEmpty() ? name : path,
                    String.valueOf(refused.getMessage()),
                    "expected values that go together");
            return Optional.empty();
        }
    }

    @Override
    public Optional<R> straight(JsonTokens in) {
        return in.atObject() ? straightFields(in) : Optional.empty();
    }

    /** As {@link #straight} where the object's beginning has been read already. */
    public Optional<R> straightFields(JsonTokens in) {
        FieldValues values = new FieldValues(fields);
        while (in.nextField()) {
            if (!values.take(in)) {
                return Optional.empty();
            }
        }
        if (!values.completeWithAbsent()) {
            return Optional.empty();
        }
        try {
            return Optional.of(made.apply(values));
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    private static <V> Optional<V> value(
            Field<?, V> field, Node.ObjectNode object, String path, Set<String> misspelt, Findings findings) {
        Node.Member member = object.members().get(field.name());
        if (member != null) {
            return field.form().read(member.value(), join(path, field.name()), findings);
        }
        if (field.absent().isEmpty() && !misspelt.contains(field.name())) {
            findings.refuse(object.place(), join(path, field.name()), "is missing", "expected " + field.explanation());
        }
        return field.absent();
    }

    /** Whether all fields are known; those that an unknown one was probably meant for go among the misspelt. */
    private boolean onlyKnown(
            Node.ObjectNode object, String path, Set<String> elsewhere, Set<String> misspelt, Findings findings) {
        boolean clean = true;
        for (Map.Entry<String, Node.Member> member : object.members().entrySet()) {
            if (!isField(member.getKey()) && !elsewhere.contains(member.getKey())) {
                clean = false;
                List<String> names = fields.stream().map(Field::name).toList();
                Optional<String> meant = Spelling.nearest(member.getKey(), names);
                meant.ifPresent(misspelt::add);
                String expected = meant.map(near -> "perhaps \"" + near + "\" was meant")
                        .orElse("expected one of " + String.join(", ", names));
                findings.refuse(
                        member.getValue().namePlace(), join(path, member.getKey()), "is no field here", expected);
            }
        }
        return clean;
    }

    private boolean isField(String word) {
        for (int i = 0; i < fields.size(); i++) {
            if (fields.get(i).name().equals(word)) {
                return true;
            }
        }
        return false;
    }

    private static String join(String path, String name) {
        return path.isEmpty() ? name : path + '.' + name;
    }

    @Override
    public void write(R value, JsonWriter out) {
        out.beginObject(inline);
        writeFields(value, out);
        out.endObject();
    }

    /** Writes the fields into an object already opened. */
    public void writeFields(R value, JsonWriter out) {
        fields.forEach(field -> writeField(field, value, out));
    }

    private static <R, V> void writeField(Field<R, V> field, R from, JsonWriter out) {
        V value = field.getter().apply(from);
        if (field.absent().isPresent() && field.absent().get().equals(value)) {
            return;
        }
        out.name(field.name());
        field.form().write(value, out);
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        return definitions.reference(name, () -> {
            Map<String, Object> schema = new LinkedHashMap<>();
            schema.put("description", explanation);
            schema.put("type", "object");
            schema.put("properties", properties(definitions));
            schema.put("required", requiredNames());
            schema.put("additionalProperties", false);
            return schema;
        });
    }

    /** The schema of each field. */
    public Map<String, Object> properties(Definitions definitions) {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (Field<R, ?> field : fields) {
            Map<String, Object> schema = new LinkedHashMap<>();
            schema.put("description", field.explanation());
            schema.putAll(field.form().schema(definitions));
            properties.put(field.name(), schema);
        }
        return properties;
    }

    /** The fields that must be there. */
    public List<Object> requiredNames() {
        return new ArrayList<>(fields.stream()
                .filter(field -> field.absent().isEmpty())
                .map(Field::name)
                .toList());
    }
}
