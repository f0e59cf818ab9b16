package org.taperwright.library.store;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.taperwright.mechanics.work.Fault;

/** Says SQLite's refusals in plain words (codes: SQLite documentation, "Result and Error Codes"). */
final class SqliteFaults {
    private static final int PRIMARY = 0xff;

    private SqliteFaults() {}

    /** Why a file could not be opened. */
    static Fault of(Path path, Exception failure) {
        return Fault.impossible(path.toString(), what(failure), "expected a whole library that can be written");
    }

    /** What went wrong, in plain words. */
    static String what(Throwable failure) {
        String words = "failed (" + failure.getMessage() + ")";
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException refusal) {
                words = what(refusal);
                if (refusal.getErrorCode() != 0) { // that of a batch has none of its own
                    return words;
                }
            }
        }
        return words;
    }

    private static String what(SQLException refusal) {
        SQLiteErrorCode code = SQLiteErrorCode.getErrorCode(refusal.getErrorCode() & PRIMARY);
        return switch (code) {
            case SQLITE_NOTADB -> "is no library or is damaged";
            case SQLITE_CORRUPT -> "is damaged";
            case SQLITE_BUSY, SQLITE_LOCKED -> "is held by another program";
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_AUTH -> "may not be written";
            case SQLITE_CANTOPEN -> "cannot be opened";
            case SQLITE_FULL -> "has no room: the disk is full";
            case SQLITE_IOERR -> "cannot be read or written: the disk failed";
            default -> "failed (" + refusal.getMessage() + ")";
        };
    }
}
