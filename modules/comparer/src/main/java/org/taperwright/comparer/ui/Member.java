package org.taperwright.comparer.ui;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;

/**
 * A design's place in a comparison as the library stands.
 *
 * @param id the design's identifier
 * @param design the design, absent when it is no longer in the library
 */
record Member(ThingId id, Optional<Design> design) {
    /** The members of a comparison, in its order. */
    static List<Member> of(SavedComparison comparison, Snapshot snapshot) {
        return comparison.designs().stream()
                .map(id -> new Member(id, snapshot.thing(id, Design.class)))
                .toList();
    }

    /** What people call it. */
    String name() {
        return design.map(Design::name).orElse("no longer in the library");
    }
}
