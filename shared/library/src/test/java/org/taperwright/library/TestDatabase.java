package org.taperwright.library;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;
import org.taperwright.library.store.ServerSettings;
import org.taperwright.library.store.ThingForms;

/** A place for one library, new for each test, on either database. */
public interface TestDatabase {
    /** Opens the library there, or makes it. */
    OpenResult open(ThingForms forms);

    /** A connection past the store. */
    Connection connect() throws SQLException;

    /** Opens the library there with the usual forms. */
    default LibraryStore open() {
        OpenResult result = open(JsonForms.forStore());
        if (result instanceof OpenResult.Opened opened) {
            return opened.store();
        }
        throw new AssertionError(((OpenResult.Refused) result).fault().sentence());
    }

    /** Does something past the store. */
    default void execute(String sql) {
        try (Connection connection = connect();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException failure) {
            throw new IllegalStateException(failure.getMessage(), failure);
        }
    }

    /** In a file of a folder. */
    static TestDatabase inFile(Path folder) {
        Path file = folder.resolve("a folder").resolve("library.db");
        return new TestDatabase() {
            @Override
            public OpenResult open(ThingForms forms) {
                return LibraryStore.open(file, forms);
            }

            @Override
            public Connection connect() throws SQLException {
                return DriverManager.getConnection("jdbc:sqlite:" + file);
            }
        };
    }

    /** On the server; skips the test where there is none. */
    static TestDatabase onServer() {
        ServerSettings settings = TestServer.get().freshDatabase();
        return new TestDatabase() {
            @Override
            public OpenResult open(ThingForms forms) {
                return LibraryStore.open(settings, TestServer.password(), forms);
            }

            @Override
            public Connection connect() throws SQLException {
                return TestServer.connect(settings);
            }
        };
    }
}
