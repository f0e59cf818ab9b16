package org.taperwright.library.exchange.transfer;

import java.util.EnumSet;
import java.util.Map;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.exchange.ReadResult;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.TreePath;
import org.taperwright.library.store.Reference;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

/** Things whose references follow what they refer to under its new identifier. */
final class Repointed {
    private Repointed() {}

    static Record of(LibraryBundle.Item item, Map<ThingId, ThingId> renamed) {
        if (renamed.isEmpty()) {
            return item.thing();
        }
        Node.ObjectNode tree = JsonForms.tree(item.id(), item.thing());
        boolean changed = false;
        for (Reference reference : Reference.of(item.thing())) {
            ThingId fresh = renamed.get(reference.to());
            if (fresh != null) {
                tree = TreePath.of(reference.where()).put(tree, new Node.TextNode(Place.START, fresh.value()));
                changed = true;
            }
        }
        if (!changed) {
            return item.thing();
        }
        ReadResult read = JsonForms.read(tree, "", EnumSet.of(ThingKind.of(item.thing())));
        return ((ReadResult.Read) read).things().get(0).thing();
    }
}
