package org.taperwright.library.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteDataSource;

/**
 * Verifies a library's file and says how to mend it: that SQLite finds it whole, that its tables are of a version this
 * program knows, that every form can be read and says what the columns searched on say, that the past has no gaps, and
 * that things refer to things that are there. Only reads; the file may be in use.
 */
public final class LibraryCheck {
    private static final String RESTORE = "Restore a backup of the library; the damaged file is set aside and kept.";

    private static final String ANOTHER =
            "Give the path of a library. If this was one, restore a backup of it; the damaged file is set aside and kept.";

    private LibraryCheck() {}

    /** Checks a file. */
    public static CheckReport of(Path file, ThingForms forms) {
        CheckFindings findings = new CheckFindings();
        SqliteFile library = new SqliteFile(file);
        try {
            if (!Files.isRegularFile(file)) {
                findings.grave(
                        file.toString(), "is no file", "expected a library's file", "Give the path of a library.");
            } else if (Files.size(file) == 0) {
                findings.grave(file.toString(), "is empty", "expected a library", RESTORE);
            } else if (!library.beginsAsDatabase()) {
                findings.grave(file.toString(), "is no library", "expected a file made by Taperwright", ANOTHER);
            } else {
                return ofDatabase(library, forms, findings);
            }
        } catch (IOException unreachable) {
            findings.grave(
                    file.toString(),
                    "cannot be read (" + unreachable.getMessage() + ")",
                    "expected a file that can be read",
                    "Check the disk and the file's permissions.");
        } catch (SQLException | JdbiException broken) {
            findings.grave(file.toString(), SqliteFaults.what(broken), "expected a whole library", RESTORE);
        }
        return findings.report();
    }

    private static CheckReport ofDatabase(SqliteFile library, ThingForms forms, CheckFindings findings)
            throws SQLException {
        SQLiteDataSource source = library.forReading();
        try (Connection connection = source.getConnection()) {
            Optional<String> stranger = library.stranger(connection);
            if (stranger.isPresent()) {
                findings.grave(library.where(), stranger.get(), "expected a file made by Taperwright", ANOTHER);
                return findings.report();
            }
            for (String damage : library.damage(connection)) {
                findings.grave(library.where(), "is damaged (" + damage + ")", "expected a whole file", RESTORE);
            }
            Migrations.State state = Migrations.forSqlite(source).state(connection);
            if (!state.unknown().isEmpty()) {
                findings.grave(
                        library.where(),
                        "was written by a newer Taperwright",
                        "expected tables that this program knows",
                        "Open it with that Taperwright or a newer one.");
                return findings.report();
            }
            if (!state.missing().isEmpty()) {
                findings.odd(
                        library.where(),
                        "lacks the migrations " + String.join(", ", state.missing()),
                        "expected tables of this version",
                        "Open it once with this Taperwright, which brings it up to date; then check again.");
            }
            return Jdbi.create(connection).withHandle(handle -> new RowCheck(handle, forms, findings).run());
        }
    }
}
