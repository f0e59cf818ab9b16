package org.taperwright.library.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Arrays;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.postgresql.ds.PGSimpleDataSource;
import org.taperwright.mechanics.work.Fault;

/**
 * A library on a PostgreSQL server, in a schema of its own. Connects to the server named and to nothing else. Every
 * transaction sees the library as it stood at its beginning ("repeatable read"), and those that store go one after another,
 * so that revisions rise in the order in which they can be seen.
 */
final class PostgresServer implements Database {
    /** The schema that holds a library. */
    static final String SCHEMA = "taperwright";

    /** The oldest version of the server that is supported. */
    static final int OLDEST = 15;

    private static final int PATIENCE_S = 10;
    private static final int SILENCE_S = 60;

    private final ServerSettings settings;
    private final Password password;

    PostgresServer(ServerSettings settings, Password password) {
        this.settings = settings;
        this.password = password;
    }

    OpenResult open(ThingForms forms) {
        if (!settings.faults().isEmpty()) {
            return new OpenResult.Refused(settings.faults().get(0));
        }
        try (Connection trial = connect()) {
            if (trial.getMetaData().getDatabaseMajorVersion() < OLDEST) {
                return refused("is too old", "expected PostgreSQL " + OLDEST + " or newer");
            }
            Jdbi asked = Jdbi.create(trial);
            if (asked.withHandle(handle -> ServerRights.holdsLibrary(handle) && !ServerRights.mayRead(handle))) {
                return new OpenResult.Refused(ConnectionTests.mayNotRead());
            }
            Migrations migrations = Migrations.forPostgres(source());
            Migrations.State state = migrations.state(trial);
            if (!state.unknown().isEmpty()) {
                return refused("holds a library of a newer Taperwright", "expected that one or a newer one to open it");
            }
            if (!state.missing().isEmpty()) {
                String reason = reasonNotToMigrate(asked);
                if (!reason.isEmpty()) {
                    return refused(reason, "expected its owner to open it once with this Taperwright");
                }
                migrations.run();
            }
            return new OpenResult.Opened(new LibraryStore(this, forms));
        } catch (SQLException | FlywayException | JdbiException failure) {
            return new OpenResult.Refused(ConnectionTests.fault(settings, failure));
        }
    }

    private static String reasonNotToMigrate(Jdbi jdbi) {
        return jdbi.withHandle(handle -> {
            if (!ServerRights.holdsLibrary(handle)) {
                return ServerRights.mayMake(handle) ? "" : "holds no library yet, and you may not make one";
            }
            return ServerRights.owns(handle) ? "" : "holds a library of an older Taperwright";
        });
    }

    private OpenResult refused(String what, String expected) {
        return new OpenResult.Refused(Fault.impossible(where(settings), what, expected));
    }

    /** The server and database, for people. */
    static String where(ServerSettings settings) {
        return settings.database() + " at " + settings.host() + ':' + settings.port();
    }

    @Override
    public Connection connect() throws SQLException {
        Connection connection = source().getConnection();
        connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
        return connection;
    }

    private PGSimpleDataSource source() {
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setServerNames(new String[] {settings.host()});
        source.setPortNumbers(new int[] {settings.port()});
        source.setDatabaseName(settings.database());
        source.setUser(settings.user());
        char[] letters = password.letters();
        source.setPassword(new String(letters));
        Arrays.fill(letters, '\0');
        source.setSslMode(
                switch (settings.encryption()) {
                    case VERIFIED -> "verify-full";
                    case REQUIRED -> "require";
                    case NONE -> "disable";
                });
        source.setGssEncMode("disable");
        source.setApplicationName("Taperwright");
        source.setCurrentSchema(SCHEMA);
        source.setConnectTimeout(PATIENCE_S);
        source.setLoginTimeout(PATIENCE_S);
        source.setSocketTimeout(SILENCE_S);
        source.setTcpKeepAlive(true);
        source.setReWriteBatchedInserts(true);
        return source;
    }

    @Override
    public void beginStoring(Handle handle) {
        handle.execute("lock table head in share row exclusive mode");
    }

    @Override
    public Access access(Handle handle) {
        return ServerRights.access(handle);
    }

    @Override
    public String what(Throwable failure) {
        return PostgresFaults.what(failure);
    }

    @Override
    public boolean lost(Throwable failure) {
        return PostgresFaults.lost(failure);
    }
}
