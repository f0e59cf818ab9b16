package org.taperwright.library.history;

import java.util.List;
import org.taperwright.library.store.Clash;

/** What became of edits on their way to the disk. */
public sealed interface StoringEvent {
    /**
     * An edit is safe on the disk.
     *
     * @param edit its name
     * @param waiting how many edits still wait
     */
    record Stored(String edit, int waiting) implements StoringEvent {}

    /**
     * Storing failed. The edits are kept in memory and tried again.
     *
     * @param reason in plain words
     * @param waiting how many edits wait
     */
    record Failed(String reason, int waiting) implements StoringEvent {}

    /**
     * Another program changed the same things first. Nothing is stored until {@link EditHistory#resolve} says whose
     * version stands; the other stays in the things' past.
     *
     * @param edit the name of the later edit
     * @param clashes both versions of each thing
     */
    record Conflicting(String edit, List<Clash> clashes) implements StoringEvent {
        public Conflicting {
            clashes = List.copyOf(clashes);
        }
    }

    /**
     * The library cannot be reached, such as one on a server. Editing goes on; edits are kept in memory until it can be.
     *
     * @param reason in plain words
     * @param waiting how many edits wait
     */
    record LinkLost(String reason, int waiting) implements StoringEvent {}

    /** The library can be reached again; what waits is being stored. */
    record LinkFound() implements StoringEvent {}
}
