package org.taperwright.library.exchange.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;

/** Text of a limited length. */
record TextForm(int shortest, int longest) implements Form<String> {
    /** From here on a sign may be a control or half of a pair; those before and from the space on are fit. */
    private static final char FIRST_UNUSUAL = 0x7F;

    @Override
    public Optional<String> read(Node node, String path, Findings findings) {
        if (!(node instanceof Node.TextNode text)) {
            findings.refuse(node, path, "expected text in double quotes");
            return Optional.empty();
        }
        int length = text.value().codePointCount(0, text.value().length());
        if (length < shortest || length > longest) {
            findings.refuse(
                    node.place(),
                    path,
                    "found text of " + length + " characters",
                    "expected " + shortest + " to " + longest);
            return Optional.empty();
        }
        if (hasUnfit(text.value())) {
            findings.refuse(node.place(), path, "found text with control or broken characters", "expected plain text");
            return Optional.empty();
        }
        return Optional.of(text.value());
    }

    @Override
    public Optional<String> straight(JsonTokens in) {
        if (!in.atText()) {
            return Optional.empty();
        }
        String text = in.text();
        int length = text.codePointCount(0, text.length());
        return length >= shortest && length <= longest && !hasUnfit(text) ? Optional.of(text) : Optional.empty();
    }

    private static boolean hasUnfit(String text) {
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (sign >= FIRST_UNUSUAL || sign < ' ') {
                return text.codePoints().anyMatch(TextForm::unfit);
            }
        }
        return false;
    }

    /** Characters that some database or editor would lose: halves of a pair and controls other than line and tab. */
    private static boolean unfit(int character) {
        boolean halfOfPair = character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
        boolean layout = character == '\n' || character == '\r' || character == '\t';
        return halfOfPair || Character.isISOControl(character) && !layout;
    }

    @Override
    public void write(String value, JsonWriter out) {
        out.text(value);
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        if (shortest > 0) {
            schema.put("minLength", shortest);
        }
        schema.put("maxLength", longest);
        return schema;
    }
}
