package org.taperwright.library.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.TestDatabase;

class LibraryStoreTest extends LibraryStoreContract {
    @TempDir
    private Path folder;

    @Override
    TestDatabase database() {
        return TestDatabase.inFile(folder);
    }

    @Test
    void everyCommitReachesTheDiskBeforeItIsAcknowledged() throws SQLException {
        TestDatabase file = database();
        try (LibraryStore store = file.open();
                Connection other = file.connect();
                Statement statement = other.createStatement()) {
            assertThat(statement.executeQuery("pragma journal_mode").getString(1))
                    .isEqualTo("wal");
            assertThat(store.pragma("synchronous")).isEqualTo("2");
        }
    }
}
