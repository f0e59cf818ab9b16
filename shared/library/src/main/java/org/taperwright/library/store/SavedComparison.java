package org.taperwright.library.store;

import java.util.List;
import org.taperwright.mechanics.design.ThingId;

/** A comparison as kept: two to six designs by identifier, and which of them is the datum. */
public record SavedComparison(String name, List<ThingId> designs, ThingId datum, String note) {
    public SavedComparison {
        designs = List.copyOf(designs);
    }
}
