package org.taperwright.library.exchange.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/**
 * A value of one of several kinds: an object whose field {@value #FIELD} says which, the others being that kind's own.
 *
 * @param kinds each kind
 */
public record KindForm<T>(List<Kind<? extends T>> kinds) implements Form<T> {
    private static final String FIELD = "kind";

    public KindForm {
        kinds = List.copyOf(kinds);
    }

    /**
     * One kind.
     *
     * @param word what the field says
     * @param type the record
     * @param form its fields
     */
    public record Kind<R>(String word, Class<R> type, RecordForm<R> form) {
        private void write(Object value, JsonWriter out) {
            out.beginObject(form.inline());
            out.name(FIELD).text(word);
            form.writeFields(type.cast(value), out);
            out.endObject();
        }

        private Map<String, Object> schema(Definitions definitions) {
            return definitions.reference(form.name(), () -> {
                Map<String, Object> properties = new LinkedHashMap<>();
                Map<String, Object> kind = new LinkedHashMap<>();
                kind.put("description", "which kind it is");
                kind.put("const", word);
                properties.put(FIELD, kind);
                properties.putAll(form.properties(definitions));
                List<Object> required = form.requiredNames();
                required.add(0, FIELD);
                Map<String, Object> schema = new LinkedHashMap<>();
                schema.put("description", form.explanation());
                schema.put("type", "object");
                schema.put("properties", properties);
                schema.put("required", required);
                schema.put("additionalProperties", false);
                return schema;
            });
        }
    }

    @Override
    public Optional<T> read(Node node, String path, Findings findings) {
        if (!(node instanceof Node.ObjectNode object)) {
            findings.refuse(node, path, "expected an object {…}");
            return Optional.empty();
        }
        String where = path.isEmpty() ? FIELD : path + '.' + FIELD;
        Node.Member member = object.members().get(FIELD);
        Form<Kind<? extends T>> words = new WordForm<>(kinds, Kind::word);
        if (member == null) {
            List<String> known = kinds.stream().map(Kind::word).toList();
            findings.refuse(node.place(), where, "is missing", "expected one of " + String.join(", ", known));
            return Optional.empty();
        }
        return words.read(member.value(), where, findings)
                .flatMap(kind -> kind.form().read(node, path, Set.of(FIELD), findings));
    }

    /** The kind is written first; a text in which it stands elsewhere is read as a tree. */
    @Override
    public Optional<T> straight(JsonTokens in) {
        if (!in.atObject() || !in.nextField() || !in.name().equals(FIELD) || !in.atText()) {
            return Optional.empty();
        }
        String word = in.text();
        return kinds.stream()
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .flatMap(kind -> kind.form().straightFields(in));
    }

    @Override
    public void write(T value, JsonWriter out) {
        kinds.stream()
                .filter(kind -> kind.type().isInstance(value))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no kind for " + value.getClass()))
                .write(value, out);
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put(
                "oneOf",
                kinds.stream().map(kind -> (Object) kind.schema(definitions)).toList());
        return schema;
    }
}
