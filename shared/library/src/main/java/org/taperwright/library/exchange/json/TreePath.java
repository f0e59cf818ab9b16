package org.taperwright.library.exchange.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A way through a tree: {@code design.taper[0].taper}. Trees never change; setting a value gives another tree. */
public final class TreePath {
    private static final Pattern STEP = Pattern.compile("([^.\\[\\]]+)|\\[(\\d{1,9})]");

    private final List<Object> steps;

    private TreePath(List<Object> steps) {
        this.steps = List.copyOf(steps);
    }

    /** The path that a text spells. */
    public static TreePath of(String text) {
        List<Object> steps = new ArrayList<>();
        Matcher step = STEP.matcher(text);
        while (step.find()) {
            steps.add(step.group(1) != null ? step.group(1) : Integer.valueOf(step.group(2)));
        }
        return new TreePath(steps);
    }

    /** What stands there. */
    public Optional<Node> in(Node tree) {
        Node reached = tree;
        for (Object step : steps) {
            Optional<Node> next = next(reached, step);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            reached = next.get();
        }
        return Optional.of(reached);
    }

    private static Optional<Node> next(Node node, Object step) {
        if (step instanceof String name && node instanceof Node.ObjectNode object) {
            return Optional.ofNullable(object.members().get(name)).map(Node.Member::value);
        }
        if (step instanceof Integer index && node instanceof Node.ArrayNode array) {
            return index < array.items().size() ? Optional.of(array.items().get(index)) : Optional.empty();
        }
        return Optional.empty();
    }

    /** The tree with a value there; objects on the way are made where there are none, list items are not. */
    public Node.ObjectNode put(Node.ObjectNode tree, Node value) {
        return (Node.ObjectNode) changed(tree, 0, Optional.of(value));
    }

    /** The tree with nothing there, and without the objects that this leaves empty. */
    public Node.ObjectNode takenFrom(Node.ObjectNode tree) {
        return in(tree).isEmpty() ? tree : (Node.ObjectNode) changed(tree, 0, Optional.empty());
    }

    private Node changed(Node node, int at, Optional<Node> value) {
        boolean last = at == steps.size() - 1;
        if (steps.get(at) instanceof String name && node instanceof Node.ObjectNode object) {
            Map<String, Node.Member> members = new LinkedHashMap<>(object.members());
            Optional<Node> child = last ? value : Optional.of(below(object, name, at, value));
            child = child.filter(each -> value.isPresent() || !empty(each));
            if (child.isPresent()) {
                members.put(name, new Node.Member(child.get().place(), child.get()));
            } else {
                members.remove(name);
            }
            return new Node.ObjectNode(object.place(), members);
        }
        if (steps.get(at) instanceof Integer index
                && node instanceof Node.ArrayNode array
                && index < array.items().size()) {
            List<Node> items = new ArrayList<>(array.items());
            if (!last) {
                items.set(index, changed(items.get(index), at + 1, value));
            } else if (value.isPresent()) {
                items.set(index, value.get());
            } else {
                items.remove((int) index);
            }
            return new Node.ArrayNode(array.place(), items);
        }
        return node;
    }

    private static boolean empty(Node node) {
        return node instanceof Node.ObjectNode object && object.members().isEmpty();
    }

    private Node below(Node.ObjectNode object, String name, int at, Optional<Node> value) {
        Node.Member member = object.members().get(name);
        Node child = member != null
                ? member.value()
                : new Node.ObjectNode(value.map(Node::place).orElse(object.place()), Map.of());
        return changed(child, at + 1, value);
    }
}
