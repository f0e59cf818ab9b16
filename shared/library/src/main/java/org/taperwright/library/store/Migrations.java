package org.taperwright.library.store;

import java.util.Arrays;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationState;

/**
 * Brings a library's tables to the newest shape. One folder of migrations holds for every database, one more for each
 * vendor; a version number stands in one of them only. A new version of a JSON form comes with a migration too, so that
 * an older program recognises a newer library.
 */
final class Migrations {
    private static final String FOLDER = "org/taperwright/library/store/migration/";
    private static final List<String> SQLITE = List.of("common/V1__revisions.sql", "sqlite/V1_1__guards.sql");

    /** Held here, for a logger that nobody holds forgets its level: only what goes wrong is worth a line. */
    private static final Logger LOG = Logger.getLogger("org.flywaydb");

    private final Flyway flyway;

    private Migrations(DataSource source, List<String> files) {
        LOG.setLevel(Level.WARNING);
        flyway = Flyway.configure(Migrations.class.getClassLoader())
                .dataSource(source)
                .table("migration")
                .resourceProvider(new MigrationFiles(Migrations.class.getClassLoader(), FOLDER, files))
                .javaMigrationClassProvider(List::of)
                .load();
    }

    static Migrations forSqlite(DataSource source) {
        return new Migrations(source, SQLITE);
    }

    /** Whether the library holds migrations that this program does not know. */
    boolean newerThanProgram() {
        return Arrays.stream(flyway.info().all())
                .map(MigrationInfo::getState)
                .anyMatch(state -> state == MigrationState.FUTURE_SUCCESS || state == MigrationState.FUTURE_FAILED);
    }

    /** The versions of the migrations that the library lacks. */
    List<String> missing() {
        return Arrays.stream(flyway.info().pending())
                .map(migration -> String.valueOf(migration.getVersion()))
                .toList();
    }

    void run() {
        flyway.migrate();
    }
}
