package org.taperwright.library.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.taperwright.library.exchange.form.Definitions;
import org.taperwright.library.exchange.form.Forms;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.store.ThingKind;

/**
 * The JSON Schema (draft 2020-12) of each form, as published in the files beside this class. It is made from the same
 * description that reads and writes; a test holds the files to it.
 */
public final class PublishedSchema {
    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    private PublishedSchema() {}

    /** File names and texts of all schemas. */
    public static Map<String, String> all() {
        Map<String, String> files = new LinkedHashMap<>();
        for (ThingKind kind : ThingKind.values()) {
            ThingForm<?> form = ThingForm.of(kind);
            for (int version = 1; version <= form.version(); version++) {
                files.put(kind.word() + '.' + version + ".schema.json", text(ofThing(form, version)));
            }
        }
        files.put("library." + FormReader.BUNDLE_VERSION + ".schema.json", text(ofBundle()));
        return files;
    }

    private static Map<String, Object> ofThing(ThingForm<?> form, int version) {
        Definitions definitions = new Definitions();
        Map<String, Object> schema =
                head(form.kind().word(), version, form.form().explanation());
        schema.putAll(body(form, version, definitions));
        schema.put("$defs", definitions.parts());
        return schema;
    }

    private static Map<String, Object> ofBundle() {
        Definitions definitions = new Definitions();
        List<Object> things = new ArrayList<>();
        for (ThingKind kind : ThingKind.values()) {
            ThingForm<?> form = ThingForm.of(kind);
            for (int older = 1; older < form.version(); older++) {
                int version = older;
                things.add(definitions.reference(
                        kind.word() + "ThingVersion" + version, () -> body(form, version, definitions)));
            }
            things.add(definitions.reference(kind.word() + "Thing", () -> body(form, form.version(), definitions)));
        }
        Map<String, Object> list = new LinkedHashMap<>();
        list.put("type", "array");
        list.put("items", Map.of("oneOf", things));
        Map<String, Object> properties = envelope(FormReader.BUNDLE, FormReader.BUNDLE_VERSION);
        properties.put("things", list);
        Map<String, Object> schema = head("library", FormReader.BUNDLE_VERSION, "Things that travel together.");
        schema.put("type", "object");
        schema.put("properties", properties);
        schema.put("required", List.of("form", "version", "things"));
        schema.put("additionalProperties", false);
        schema.put("$defs", definitions.parts());
        return schema;
    }

    private static Map<String, Object> head(String name, int version, String explanation) {
        Map<String, Object> head = new LinkedHashMap<>();
        head.put("$schema", DIALECT);
        head.put("$id", "urn:taperwright:" + name + ':' + version);
        head.put("title", ThingForm.PREFIX + name + " version " + version);
        head.put("description", explanation);
        return head;
    }

    private static Map<String, Object> body(ThingForm<?> form, int version, Definitions definitions) {
        RecordForm<?> fields = form.versions().get(version - 1);
        Map<String, Object> properties = envelope(form.name(), version);
        Map<String, Object> id = new LinkedHashMap<>();
        id.put("description", "the thing's identifier; it stays when the thing is renamed");
        id.putAll(Forms.thing().schema(definitions));
        properties.put("id", id);
        properties.putAll(fields.properties(definitions));
        List<Object> required = new ArrayList<>(List.of("form", "version", "id"));
        required.addAll(fields.requiredNames());
        Map<String, Object> body = new LinkedHashMap<>();
        body.put("type", "object");
        body.put("properties", properties);
        body.put("required", required);
        body.put("additionalProperties", false);
        return body;
    }

    private static Map<String, Object> envelope(String form, int version) {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("$schema", Map.of("type", "string"));
        properties.put("form", Map.of("const", form));
        properties.put("version", Map.of("const", version));
        return properties;
    }

    private static String text(Map<String, Object> schema) {
        JsonWriter out = new JsonWriter();
        write(schema, out);
        return out.finished();
    }

    private static void write(Object value, JsonWriter out) {
        if (value instanceof Map<?, ?> map) {
            out.beginObject(map.size() == 1 && !(map.values().iterator().next() instanceof Map));
            map.forEach((name, each) -> write(each, out.name(String.valueOf(name))));
            out.endObject();
        } else if (value instanceof List<?> list) {
            out.beginList(list.stream().allMatch(String.class::isInstance));
            list.forEach(each -> write(each, out));
            out.endList();
        } else if (value instanceof Number number) {
            out.number(number.doubleValue());
        } else if (value instanceof Boolean flag) {
            out.flag(flag);
        } else {
            out.text(String.valueOf(value));
        }
    }
}
