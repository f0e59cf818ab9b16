package org.taperwright.library.store;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.taperwright.mechanics.design.ThingId;

/**
 * Everything in a library as it is opened.
 *
 * @param snapshot all present things
 * @param heads the revision at which each thing stands, those taken out included; handed over, for a copy would cost as much again
 * @param unreadable present things whose form can no longer be read
 */
public record Contents(Snapshot snapshot, Map<ThingId, Long> heads, List<Revision> unreadable) {
    public Contents {
        heads = Collections.unmodifiableMap(heads);
        unreadable = List.copyOf(unreadable);
    }
}
