package org.taperwright.library.store;

import org.taperwright.mechanics.work.Fault;

/** What came of taking a backup. */
public sealed interface BackupResult {
    /** Taken, and found whole. */
    record Taken(Backup backup) implements BackupResult {}

    /** Not needed: the newest backup holds everything. */
    record Unchanged(Backup newest) implements BackupResult {}

    /** Not taken, and why; the backups there are stay as they were. */
    record Refused(Fault fault) implements BackupResult {}
}
