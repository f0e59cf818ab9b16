package org.taperwright.library.exchange.table;

import java.util.LinkedHashMap;
import java.util.Map;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.Place;

/** Trees moved to another place. */
final class Replaced {
    private Replaced() {}

    /** The tree with every node at one place. */
    static Node at(Node node, Place place) {
        if (node instanceof Node.ObjectNode object) {
            Map<String, Node.Member> members = new LinkedHashMap<>();
            object.members()
                    .forEach((name, member) -> members.put(name, new Node.Member(place, at(member.value(), place))));
            return new Node.ObjectNode(place, members);
        }
        if (node instanceof Node.ArrayNode array) {
            return new Node.ArrayNode(
                    place, array.items().stream().map(item -> at(item, place)).toList());
        }
        if (node instanceof Node.TextNode text) {
            return new Node.TextNode(place, text.value());
        }
        if (node instanceof Node.NumberNode number) {
            return new Node.NumberNode(place, number.written(), number.value());
        }
        if (node instanceof Node.FlagNode flag) {
            return new Node.FlagNode(place, flag.value());
        }
        return new Node.NullNode(place);
    }
}
