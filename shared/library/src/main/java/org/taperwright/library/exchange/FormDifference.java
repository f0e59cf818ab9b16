package org.taperwright.library.exchange;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.taperwright.library.exchange.json.JsonText;
import org.taperwright.library.exchange.json.Limits;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.mechanics.design.ThingId;

/**
 * What differs between two versions of a thing, field by field of their JSON forms. In lists, what stands alike at the
 * beginning and at the end is passed over, so that an item put in between does not change all that follow it.
 */
public final class FormDifference {
    /** A longer stretch that differs, such as a traced outline, is told as one change. */
    private static final int LONGEST = 50;

    private static final ThingId ANY = new ThingId("any");

    private final List<FieldChange> changes = new ArrayList<>();

    private FormDifference() {}

    /** The fields in which two things differ, in the order of the form; none when they are equal. */
    public static List<FieldChange> between(Record before, Record after) {
        if (before.equals(after)) {
            return List.of();
        }
        FormDifference difference = new FormDifference();
        difference.compare("", Optional.of(tree(before)), Optional.of(tree(after)));
        return List.copyOf(difference.changes);
    }

    private static Node tree(Record thing) {
        return JsonText.parse(JsonForms.write(ANY, thing), Limits.USUAL).root().orElseThrow();
    }

    private void compare(String path, Optional<Node> before, Optional<Node> after) {
        if (isObject(before) && isObject(after) || onlyOne(before, after, Node.ObjectNode.class)) {
            compareObjects(path, before, after);
        } else if (isList(before) && isList(after) || onlyOne(before, after, Node.ArrayNode.class)) {
            compareLists(path, items(before), items(after));
        } else {
            Optional<String> was = before.map(FormDifference::shown);
            Optional<String> is = after.map(FormDifference::shown);
            if (!was.equals(is)) {
                changes.add(new FieldChange(path, was, is));
            }
        }
    }

    private void compareObjects(String path, Optional<Node> before, Optional<Node> after) {
        Set<String> names = new LinkedHashSet<>();
        before.map(FormDifference::names).ifPresent(names::addAll);
        after.map(FormDifference::names).ifPresent(names::addAll);
        for (String name : names) {
            compare(path.isEmpty() ? name : path + '.' + name, member(before, name), member(after, name));
        }
    }

    private void compareLists(String path, List<Node> before, List<Node> after) {
        int shorter = Math.min(before.size(), after.size());
        int begin = 0;
        while (begin < shorter && alike(before.get(begin), after.get(begin))) {
            begin++;
        }
        int end = 0;
        while (end < shorter - begin && alike(before.get(before.size() - 1 - end), after.get(after.size() - 1 - end))) {
            end++;
        }
        int stretch = Math.max(before.size(), after.size()) - begin - end;
        if (stretch > LONGEST) {
            changes.add(new FieldChange(path, Optional.of(count(before)), Optional.of(count(after))));
            return;
        }
        for (int i = begin; i < begin + stretch; i++) {
            compare(path + '[' + i + ']', item(before, i, end), item(after, i, end));
        }
    }

    private static Optional<Node> item(List<Node> items, int index, int leftAtEnd) {
        return index < items.size() - leftAtEnd ? Optional.of(items.get(index)) : Optional.empty();
    }

    private static boolean alike(Node one, Node other) {
        FormDifference difference = new FormDifference();
        difference.compare("", Optional.of(one), Optional.of(other));
        return difference.changes.isEmpty();
    }

    private static boolean isObject(Optional<Node> node) {
        return node.filter(Node.ObjectNode.class::isInstance).isPresent();
    }

    private static boolean isList(Optional<Node> node) {
        return node.filter(Node.ArrayNode.class::isInstance).isPresent();
    }

    private static boolean onlyOne(Optional<Node> before, Optional<Node> after, Class<? extends Node> type) {
        return before.isEmpty() && after.filter(type::isInstance).isPresent()
                || after.isEmpty() && before.filter(type::isInstance).isPresent();
    }

    private static Set<String> names(Node node) {
        return ((Node.ObjectNode) node).members().keySet();
    }

    private static Optional<Node> member(Optional<Node> node, String name) {
        return node.map(Node.ObjectNode.class::cast)
                .map(object -> object.members().get(name))
                .map(Node.Member::value);
    }

    private static List<Node> items(Optional<Node> node) {
        return node.map(Node.ArrayNode.class::cast).map(Node.ArrayNode::items).orElse(List.of());
    }

    private static String count(List<Node> items) {
        return "a list of " + items.size();
    }

    private static String shown(Node node) {
        if (node instanceof Node.TextNode text) {
            return text.value();
        }
        return node instanceof Node.NumberNode number ? number.written() : node.described();
    }
}
