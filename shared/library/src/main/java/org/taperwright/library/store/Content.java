package org.taperwright.library.store;

import java.util.List;
import org.taperwright.mechanics.work.Fault;

/** What a revision made of a thing. */
public sealed interface Content {
    /** The thing as it then was. */
    record Present(Record thing) implements Content {}

    /** The thing was taken out of the library. */
    record TakenOut() implements Content {}

    /** The thing's form can no longer be read; why. */
    record Unreadable(List<Fault> faults) implements Content {
        public Unreadable {
            faults = List.copyOf(faults);
        }
    }
}
