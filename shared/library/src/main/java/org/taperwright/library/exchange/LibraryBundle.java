package org.taperwright.library.exchange;

import java.util.List;
import org.taperwright.mechanics.design.ThingId;

/** Things that travel together in one file. */
public record LibraryBundle(List<Item> items) {
    public LibraryBundle {
        items = List.copyOf(items);
    }

    /** A thing and its identifier. */
    public record Item(ThingId id, Record thing) {}
}
