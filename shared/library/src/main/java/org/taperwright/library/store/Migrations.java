package org.taperwright.library.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/**
 * Brings a library's tables to the newest shape. One folder of migrations holds for every database, one more for each
 * vendor; a version number stands in one of them only. A new version of a JSON form comes with a migration too, so that
 * an older program recognises a newer library.
 */
final class Migrations {
    private static final String TABLE = "migration";
    private static final String FOLDER = "org/taperwright/library/store/migration/";
    private static final List<String> SQLITE =
            List.of("common/V1__revisions.sql", "sqlite/V1_1__guards.sql", "common/V2__edit_token.sql");
    private static final List<String> POSTGRES =
            List.of("common/V1__revisions.sql", "postgres/V1_1__guards.sql", "common/V2__edit_token.sql");

    /** Held here, for a logger that nobody holds forgets its level: only what goes wrong is worth a line. */
    private static final Logger LOG = Logger.getLogger("org.flywaydb");

    private final DataSource source;
    private final List<String> files;
    private final Optional<String> schema;

    private Migrations(DataSource source, List<String> files, Optional<String> schema) {
        this.source = source;
        this.files = files;
        this.schema = schema;
    }

    static Migrations forSqlite(DataSource source) {
        return new Migrations(source, SQLITE, Optional.empty());
    }

    static Migrations forPostgres(DataSource source) {
        return new Migrations(source, POSTGRES, Optional.of(PostgresServer.SCHEMA));
    }

    /**
     * How a library's tables stand to this program.
     *
     * @param missing versions that the library lacks
     * @param unknown versions that it holds and this program does not know
     */
    record State(List<String> missing, List<String> unknown) {}

    /** Looks at the table of migrations itself, which any reader may and which is quicker than to set up Flyway. */
    State state(Connection connection) throws SQLException {
        List<String> known = files.stream().map(Migrations::version).toList();
        List<String> held = new ArrayList<>();
        try (ResultSet tables = connection.getMetaData().getTables(null, schema.orElse(null), TABLE, null)) {
            if (tables.next()) {
                try (Statement statement = connection.createStatement();
                        ResultSet rows = statement.executeQuery(
                                "select version from migration where version is not null order by installed_rank")) {
                    while (rows.next()) {
                        held.add(rows.getString(1));
                    }
                }
            }
        }
        return new State(without(known, held), without(held, known));
    }

    private static List<String> without(List<String> all, List<String> some) {
        return all.stream().filter(each -> !some.contains(each)).toList();
    }

    /** The version in a file's name: "1.1" of "sqlite/V1_1__guards.sql". */
    private static String version(String file) {
        return file.substring(file.indexOf('/') + 2, file.indexOf("__")).replace('_', '.');
    }

    void run() {
        LOG.setLevel(Level.WARNING);
        Flyway.configure(Migrations.class.getClassLoader())
                .dataSource(source)
                .schemas(schema.stream().toArray(String[]::new))
                .table(TABLE)
                .resourceProvider(new MigrationFiles(Migrations.class.getClassLoader(), FOLDER, files))
                .javaMigrationClassProvider(List::of)
                .load()
                .migrate();
    }
}
