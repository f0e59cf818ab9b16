package org.taperwright.shaping.kit;

import java.util.List;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.kit.DiscardReason.Weight;

/**
 * What to discard of a kit and why.
 *
 * @param items pieces in use that some rule would have discarded or considered, in the kit's order
 * @param remarks what could not be checked
 */
public record DiscardList(List<Item> items, List<Fault> remarks) {
    public DiscardList {
        items = List.copyOf(items);
        remarks = List.copyOf(remarks);
    }

    /** A piece and why. */
    public record Item(Piece piece, List<DiscardReason> reasons) {
        public Item {
            reasons = List.copyOf(reasons);
        }

        /** Whether some rule says to discard it; otherwise it is only to be considered. */
        public boolean due() {
            return reasons.stream().anyMatch(reason -> reason.weight() == Weight.DISCARD);
        }
    }
}
