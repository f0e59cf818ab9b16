package org.taperwright.comparer.ui;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;

/**
 * A design's place in a comparison as the library stands.
 *
 * @param id the design's identifier
 * @param design the design, absent when it is no longer in the library
 * @param alloys the alloys that it can name
 */
record Member(ThingId id, Optional<Design> design, KnownAlloys alloys) {
    /** What its results hang on, but for the design's identifier. */
    record Input(Design design, Optional<Alloy> alloy) {}

    /** One of an alloy that comes with the program. */
    Member(ThingId id, Optional<Design> design) {
        this(id, design, KnownAlloys.SHIPPED);
    }

    /** The members of a comparison, in its order. */
    static List<Member> of(SavedComparison comparison, Snapshot snapshot) {
        KnownAlloys alloys = snapshot.alloys();
        return comparison.designs().stream()
                .map(id -> new Member(id, snapshot.thing(id, Design.class), alloys))
                .toList();
    }

    /** What its results hang on; absent with the design. */
    Optional<Input> input() {
        return design.map(there -> new Input(there, alloys.find(there.alloy())));
    }

    /** What people call it. */
    String name() {
        return design.map(Design::name).orElse("no longer in the library");
    }
}
