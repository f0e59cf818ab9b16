package org.taperwright.library.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes by SQLite's documentation, "Result and Error Codes"; extended codes keep the primary one in their low byte. */
class SqliteFaultsTest {
    @ParameterizedTest(name = "code {0}: {1}")
    @CsvSource({
        "5, is held by another program",
        "6, is held by another program",
        "517, is held by another program",
        "8, may not be written",
        "1032, may not be written",
        "10, cannot be read or written: the disk failed",
        "2570, cannot be read or written: the disk failed",
        "11, is damaged",
        "779, is damaged",
        "13, has no room: the disk is full",
        "14, cannot be opened",
        "26, is no library or is damaged",
    })
    void everyRefusalOfTheDatabaseIsSaidInPlainWords(int code, String words) {
        SQLException refusal = new SQLException("[SQLITE] whatever", "", code);
        assertThat(SqliteFaults.what(new IllegalStateException(refusal))).isEqualTo(words);
        assertThat(SqliteFaults.of(Path.of("l.db"), refusal).sentence())
                .isEqualTo("l.db: " + words + "; expected a whole library that can be written");
    }

    @Test
    void anUnknownRefusalIsSaidInItsOwnWords() {
        assertThat(SqliteFaults.what(new SQLException("odd", "", 1))).isEqualTo("failed (odd)");
        assertThat(SqliteFaults.what(new IllegalStateException("odd"))).isEqualTo("failed (odd)");
    }
}
