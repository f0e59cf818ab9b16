package org.taperwright.library.exchange.transfer;

import java.util.List;
import org.taperwright.library.exchange.FieldChange;
import org.taperwright.library.store.ThingKind;

/** How a thing on offer stands to the library. */
public sealed interface Standing {
    /** The library has no thing of that identifier. */
    record New() implements Standing {}

    /** The library has it just so. */
    record Same() implements Standing {}

    /**
     * The library has it otherwise.
     *
     * @param changes the fields that differ, from the library's to the one on offer; the first twenty of them
     */
    record Changed(List<FieldChange> changes) implements Standing {
        public Changed {
            changes = List.copyOf(changes);
        }
    }

    /** The library has another kind of thing of that identifier. */
    record Other(ThingKind ours) implements Standing {}
}
