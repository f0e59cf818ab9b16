package org.taperwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** A file of reference values. */
final class ReferenceFile {
    private ReferenceFile() {}

    static JsonNode read(String name) {
        try (InputStream in = ReferenceFile.class.getResourceAsStream("/reference/" + name)) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<JsonNode> cases(String name, String table) {
        return StreamSupport.stream(read(name).get(table).spliterator(), false);
    }

    /** The value with an identifier in the file of published values. */
    static JsonNode published(String id) {
        return cases("published.json", "values")
                .filter(value -> value.get("id").asText().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no published value " + id))
                .get("value");
    }
}
