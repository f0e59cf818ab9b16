package org.taperwright.library.store;

import java.nio.file.Path;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;

/** What came of putting a backup in the place of a library. */
public sealed interface RestoreResult {
    /**
     * In place.
     *
     * @param setAside where the file that stood there now lies; empty when there was none
     */
    record Restored(Optional<Path> setAside) implements RestoreResult {}

    /** Nothing changed, and why. */
    record Refused(Fault fault) implements RestoreResult {}
}
