package org.taperwright.library.exchange.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.Spelling;

/** One word of a few. */
record WordForm<T>(List<T> choices, Function<T, String> word) implements Form<T> {
    @Override
    public Optional<T> read(Node node, String path, Findings findings) {
        Optional<T> chosen = node instanceof Node.TextNode text ? choice(text.value()) : Optional.empty();
        if (chosen.isPresent()) {
            return chosen;
        }
        List<String> words = choices.stream().map(word).toList();
        if (node instanceof Node.TextNode text) {
            String meant = Spelling.nearest(text.value(), words)
                    .map(near -> " (perhaps \"" + near + "\")")
                    .orElse("");
            findings.refuse(node, path, "expected " + listed(words) + meant);
            return Optional.empty();
        }
        findings.refuse(node, path, "expected " + listed(words));
        return Optional.empty();
    }

    @Override
    public Optional<T> straight(JsonTokens in) {
        return in.atText() ? choice(in.text()) : Optional.empty();
    }

    private Optional<T> choice(String text) {
        for (T choice : choices) {
            if (word.apply(choice).equals(text)) {
                return Optional.of(choice);
            }
        }
        return Optional.empty();
    }

    private static String listed(List<String> words) {
        List<String> quoted = words.stream().map(each -> '"' + each + '"').toList();
        int last = quoted.size() - 1;
        return last == 0 ? quoted.get(0) : String.join(", ", quoted.subList(0, last)) + " or " + quoted.get(last);
    }

    @Override
    public void write(T value, JsonWriter out) {
        out.text(word.apply(value));
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("enum", new ArrayList<Object>(choices.stream().map(word).toList()));
        return schema;
    }
}
