package org.taperwright.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;

/** A command as it ran. */
record Ran(int code, String out, String err) {
    static Ran with(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(args, new PrintWriter(out), new PrintWriter(err));
        return new Ran(code, out.toString(), err.toString());
    }

    JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (JsonProcessingException malformed) {
            throw new AssertionError("not JSON: " + out, malformed);
        }
    }
}
