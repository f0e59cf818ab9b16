package org.taperwright.library.exchange.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.TreePath;

/**
 * Parts of a design that a table shows by one value though the design may have several. A value equal to the one shown
 * changes nothing; another makes the part uniform along the blade. An empty cell leaves the design as it is.
 */
final class DesignPlacings {
    private static final TreePath TAPERS = TreePath.of("design.taper");
    private static final TreePath SECTIONS = TreePath.of("design.sections");

    private DesignPlacings() {}

    /** The taper next to the tip. */
    static Placing taper() {
        return shown(TreePath.of("design.taper[0].taper"), (tree, value) -> {
            Node end = workingPart().in(tree).orElse(value);
            return TAPERS.put(tree, list(object(value, Map.of("fromMm", zero(value), "toMm", end, "taper", value))));
        });
    }

    /** The length of the working part: where the last segment ends. */
    static Placing workingPart() {
        return new Shown(
                DesignPlacings::lastEnd,
                (tree, value) -> segments(tree)
                        .map(segments -> TreePath.of(
                                        "design.taper[" + (segments.items().size() - 1) + "].toMm")
                                .put(tree, value))
                        .orElse(tree));
    }

    /** The family of the section at the tip. */
    static Placing section() {
        return shown(TreePath.of("design.sections[0].shape.family"), (tree, value) -> {
            Node shape = object(value, Map.of("family", value));
            return SECTIONS.put(tree, list(object(value, Map.of("levelMm", zero(value), "shape", shape))));
        });
    }

    private static Optional<Node> lastEnd(Node.ObjectNode tree) {
        return segments(tree)
                .flatMap(segments -> TreePath.of("[" + (segments.items().size() - 1) + "].toMm")
                        .in(segments));
    }

    private static Optional<Node.ArrayNode> segments(Node.ObjectNode tree) {
        return TAPERS.in(tree)
                .filter(Node.ArrayNode.class::isInstance)
                .map(Node.ArrayNode.class::cast)
                .filter(array -> !array.items().isEmpty());
    }

    private static Node zero(Node like) {
        return new Node.NumberNode(like.place(), "0", 0);
    }

    private static Node.ArrayNode list(Node item) {
        return new Node.ArrayNode(item.place(), List.of(item));
    }

    private static Node.ObjectNode object(Node like, Map<String, Node> values) {
        Map<String, Node.Member> members = new LinkedHashMap<>();
        values.forEach((name, value) -> members.put(name, new Node.Member(value.place(), value)));
        return new Node.ObjectNode(like.place(), members);
    }

    private static Placing shown(TreePath path, Setting setting) {
        return new Shown(path::in, setting);
    }

    /** Whether two single values are the same. */
    static boolean same(Node one, Node other) {
        if (one instanceof Node.NumberNode number && other instanceof Node.NumberNode another) {
            return number.value() == another.value();
        }
        return one instanceof Node.TextNode text
                && other instanceof Node.TextNode another
                && text.value().equals(another.value());
    }

    private interface Setting {
        Node.ObjectNode put(Node.ObjectNode tree, Node value);
    }

    private interface Showing {
        Optional<Node> in(Node.ObjectNode tree);
    }

    private record Shown(Showing showing, Setting setting) implements Placing {
        @Override
        public Optional<Node> in(Node.ObjectNode tree) {
            return showing.in(tree);
        }

        @Override
        public Node.ObjectNode put(Node.ObjectNode tree, Node value) {
            return in(tree).filter(there -> same(there, value)).isPresent() ? tree : setting.put(tree, value);
        }

        @Override
        public Node.ObjectNode cleared(Node.ObjectNode tree) {
            return tree;
        }
    }
}
