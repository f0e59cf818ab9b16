package org.taperwright.library.exchange;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.mechanics.work.Fault;

/**
 * Where a thing was read from, so that what later checks find wrong with it can be shown at its line and column.
 */
public final class Origin {
    private static final Pattern STEP = Pattern.compile("([A-Za-z0-9_$-]+)|\\[(\\d{1,9})]");

    private final String source;
    private final Node node;

    Origin(String source, Node node) {
        this.source = source;
        this.node = node;
    }

    /** The file. */
    public String source() {
        return source;
    }

    /** The part of the thing that a field holds, such as the design of an instrument. */
    public Origin under(String field) {
        return new Origin(source, deepest(field));
    }

    /** Puts a fault where its field stands, or, when the field was left out, where what should hold it begins. */
    public FileFault place(Fault fault) {
        return FileFault.at(source, deepest(fault.where()).place(), fault);
    }

    private Node deepest(String path) {
        Node reached = node;
        Matcher step = STEP.matcher(path);
        while (step.find()) {
            Optional<Node> next = step.group(1) != null
                    ? member(reached, step.group(1))
                    : item(reached, Integer.parseInt(step.group(2)));
            if (next.isEmpty()) {
                return reached;
            }
            reached = next.get();
        }
        return reached;
    }

    private static Optional<Node> member(Node node, String name) {
        return node instanceof Node.ObjectNode object
                ? Optional.ofNullable(object.members().get(name)).map(Node.Member::value)
                : Optional.empty();
    }

    private static Optional<Node> item(Node node, int index) {
        return node instanceof Node.ArrayNode array && index < array.items().size()
                ? Optional.of(array.items().get(index))
                : Optional.empty();
    }
}
