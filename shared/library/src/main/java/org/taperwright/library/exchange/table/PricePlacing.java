package org.taperwright.library.exchange.table;

import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.TreePath;

/** A price, whose currency may stand in another column or be known already. */
final class PricePlacing implements Placing {
    private static final TreePath PRICE = TreePath.of("supply.price");
    private static final TreePath AMOUNT = TreePath.of("supply.price.amount");

    @Override
    public Optional<Node> in(Node.ObjectNode tree) {
        return AMOUNT.in(tree);
    }

    @Override
    public Node.ObjectNode put(Node.ObjectNode tree, Node value) {
        Node.ObjectNode put = tree;
        for (Map.Entry<String, Node.Member> each :
                ((Node.ObjectNode) value).members().entrySet()) {
            put = TreePath.of("supply.price." + each.getKey())
                    .put(put, each.getValue().value());
        }
        return put;
    }

    @Override
    public Node.ObjectNode cleared(Node.ObjectNode tree) {
        return PRICE.takenFrom(tree);
    }

    /** The tree without a price that has a currency but no amount. */
    static Node.ObjectNode settled(Node.ObjectNode tree) {
        return AMOUNT.in(tree).isEmpty() ? PRICE.takenFrom(tree) : tree;
    }
}
