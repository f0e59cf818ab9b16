package org.taperwright.library.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.taperwright.mechanics.work.Fault;

/**
 * A library in one SQLite file. The write-ahead log with full synchronising keeps every acknowledged edit through a
 * crash of the program or of the machine (SQLite documentation, "Write-Ahead Logging" and "PRAGMA synchronous").
 */
final class SqliteFile implements Database {
    /** Marks our files in SQLite's header: "TpWr" in ASCII. */
    private static final int APPLICATION_ID = 0x54705772;

    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int PATIENCE_MS = 5000;

    private static final Logger LOG = Logger.getLogger(SqliteFile.class.getName());

    private final Path path;

    SqliteFile(Path path) {
        this.path = path;
    }

    OpenResult open(ThingForms forms) {
        try {
            if (Files.isDirectory(path)) {
                return refused("is a folder", "expected a library's file");
            }
            if (!beginsAsDatabase()) {
                return refused("is no library", "expected a file made by Taperwright");
            }
            Files.createDirectories(path.toAbsolutePath().getParent());
            return openDatabase(forms);
        } catch (IOException unreachable) {
            return refused(
                    "cannot be reached (" + unreachable.getMessage() + ")", "expected a file that can be written");
        } catch (SQLException broken) {
            return new OpenResult.Refused(SqliteFaults.of(path, broken));
        } catch (FlywayException broken) {
            return new OpenResult.Refused(SqliteFaults.of(path, broken));
        }
    }

    /** Whether the file is new, empty, or begins as SQLite's files do; asked before SQLite may touch it. */
    boolean beginsAsDatabase() throws IOException {
        if (!Files.exists(path) || Files.size(path) == 0) {
            return true;
        }
        try (InputStream in = Files.newInputStream(path)) {
            return Arrays.equals(in.readNBytes(MAGIC.length), MAGIC);
        }
    }

    private OpenResult openDatabase(ThingForms forms) throws SQLException {
        Optional<Fault> reason = reasonToLeaveAlone();
        if (reason.isPresent()) {
            return new OpenResult.Refused(reason.get());
        }
        SQLiteDataSource source = source(forWriting());
        Migrations migrations = Migrations.forSqlite(source);
        Migrations.State state;
        try (Connection connection = forReading().getConnection()) {
            state = migrations.state(connection);
        }
        if (!state.unknown().isEmpty()) {
            return refused("was written by a newer Taperwright", "expected that one or a newer one to open it");
        }
        if (!state.missing().isEmpty()) {
            migrations.run();
        }
        return new OpenResult.Opened(new LibraryStore(this, forms));
    }

    /** Looks at the file without changing it; only a new one is marked as ours. */
    private Optional<Fault> reasonToLeaveAlone() throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(PATIENCE_MS);
        try (Connection connection = source(config).getConnection();
                Statement statement = connection.createStatement()) {
            int mark = number(statement, "pragma application_id");
            boolean empty = mark == 0 && number(statement, "select count(*) from sqlite_master") == 0;
            if (empty) {
                statement.execute("pragma application_id = " + APPLICATION_ID);
            } else if (mark != APPLICATION_ID) {
                return Optional.of(fault("is a database, but no library", "expected a file made by Taperwright"));
            }
            String check = text(statement, "pragma quick_check(1)");
            return check.equals("ok")
                    ? Optional.empty()
                    : Optional.of(
                            fault("is damaged (" + check.strip() + ")", "expected a whole file: restore a backup"));
        }
    }

    @Override
    public Connection connect() throws SQLException {
        return source(forWriting()).getConnection();
    }

    @Override
    public void beginStoring(Handle handle) {
        // every transaction holds the file for itself from its beginning, see forWriting
    }

    @Override
    public Access access(Handle handle) {
        return Access.EDITOR;
    }

    @Override
    public String what(Throwable failure) {
        return SqliteFaults.what(failure);
    }

    @Override
    public boolean lost(Throwable failure) {
        return false;
    }

    /** Connections that change nothing. */
    SQLiteDataSource forReading() {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(PATIENCE_MS);
        config.setReadOnly(true);
        return source(config);
    }

    /** Why a database is no library of ours; empty when it is. */
    Optional<String> stranger(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            return number(statement, "pragma application_id") == APPLICATION_ID
                    ? Optional.empty()
                    : Optional.of("is a database, but no library");
        }
    }

    /** What SQLite itself finds wrong with the file, rows that refer to no row included. */
    List<String> damage(Connection connection) throws SQLException {
        List<String> damage = new ArrayList<>();
        try (Statement statement = connection.createStatement()) {
            try (ResultSet rows = statement.executeQuery("pragma integrity_check(20)")) {
                while (rows.next()) {
                    damage.add(rows.getString(1).strip());
                }
            }
            damage.remove("ok");
            try (ResultSet rows = statement.executeQuery("pragma foreign_key_check")) {
                while (rows.next() && damage.size() < 20) {
                    damage.add("row " + rows.getLong(2) + " of " + rows.getString(1) + " refers to no row of "
                            + rows.getString(3));
                }
            }
        }
        return damage;
    }

    /** How much a library holds. */
    record Look(long things, long revisions) {}

    /** A look at a file that SQLite finds whole; empty when it does not, or when it is no library. */
    Optional<Look> look() {
        try (Connection connection = forReading().getConnection();
                Statement statement = connection.createStatement()) {
            if (!Files.isRegularFile(path)
                    || !beginsAsDatabase()
                    || stranger(connection).isPresent()
                    || !text(statement, "pragma quick_check(1)").equals("ok")) {
                return Optional.empty();
            }
            return Optional.of(new Look(
                    number(statement, "select count(*) from present_thing"),
                    number(statement, "select count(*) from revision")));
        } catch (SQLException | IOException broken) {
            LOG.log(Level.FINE, broken, () -> path + " is no whole library");
            return Optional.empty();
        }
    }

    /** Writes a copy of the library as it stands, while it may be in use, to a file that is not there yet. */
    void copyTo(Path copy) throws SQLException {
        try (Connection connection = forReading().getConnection();
                PreparedStatement statement = connection.prepareStatement("vacuum into ?")) {
            statement.setString(1, copy.toString());
            statement.execute();
        }
    }

    /** The file, for people. */
    String where() {
        return path.toString();
    }

    private static SQLiteConfig forWriting() {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(PATIENCE_MS);
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.enforceForeignKeys(true);
        return config;
    }

    private SQLiteDataSource source(SQLiteConfig config) {
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + path.toAbsolutePath());
        return source;
    }

    private static int number(Statement statement, String query) throws SQLException {
        try (ResultSet rows = statement.executeQuery(query)) {
            rows.next();
            return rows.getInt(1);
        }
    }

    private static String text(Statement statement, String query) throws SQLException {
        try (ResultSet rows = statement.executeQuery(query)) {
            rows.next();
            return rows.getString(1);
        }
    }

    private OpenResult refused(String what, String expected) {
        return new OpenResult.Refused(fault(what, expected));
    }

    private Fault fault(String what, String expected) {
        return Fault.impossible(path.toString(), what, expected);
    }
}
