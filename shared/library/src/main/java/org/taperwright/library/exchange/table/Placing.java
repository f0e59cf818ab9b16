package org.taperwright.library.exchange.table;

import java.util.Optional;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.TreePath;

/** Where in a thing's tree a cell's value belongs. */
interface Placing {
    /** The value that stands there. */
    Optional<Node> in(Node.ObjectNode tree);

    /** The tree with a value there. */
    Node.ObjectNode put(Node.ObjectNode tree, Node value);

    /** The tree where the value was cleared. */
    Node.ObjectNode cleared(Node.ObjectNode tree);

    /** A value that may be absent: an empty cell clears it. */
    static Placing at(String path) {
        return placing(path, true);
    }

    /** A value that is always there: an empty cell leaves it as it is. */
    static Placing kept(String path) {
        return placing(path, false);
    }

    private static Placing placing(String text, boolean clears) {
        TreePath path = TreePath.of(text);
        return new Placing() {
            @Override
            public Optional<Node> in(Node.ObjectNode tree) {
                return path.in(tree);
            }

            @Override
            public Node.ObjectNode put(Node.ObjectNode tree, Node value) {
                return path.put(tree, value);
            }

            @Override
            public Node.ObjectNode cleared(Node.ObjectNode tree) {
                return clears ? path.takenFrom(tree) : tree;
            }
        };
    }
}
