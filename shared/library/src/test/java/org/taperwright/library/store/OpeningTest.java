package org.taperwright.library.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.Examples;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.mechanics.design.ThingId;

class OpeningTest {
    @TempDir
    private Path folder;

    private OpenResult open(Path file) {
        return LibraryStore.open(file, JsonForms.forStore());
    }

    private void refuses(Path file, String sentence) throws IOException {
        byte[] before = Files.isDirectory(file) ? new byte[0] : Files.readAllBytes(file);
        assertThat(open(file))
                .isInstanceOfSatisfying(
                        OpenResult.Refused.class,
                        refused -> assertThat(refused.fault().sentence()).isEqualTo(file + ": " + sentence));
        if (!Files.isDirectory(file)) {
            assertThat(Files.readAllBytes(file)).as("left as it was").isEqualTo(before);
        }
    }

    private Path library(int things) {
        Path file = folder.resolve("library.db");
        try (LibraryStore store = ((OpenResult.Opened) open(file)).store()) {
            for (int i = 0; i < things; i++) {
                store.append(
                        "Add " + i,
                        "someone",
                        Instant.EPOCH,
                        List.of(new Draft(new ThingId("t" + i), ThingKind.DESIGN, Optional.of(Examples.design()), 0)));
            }
        }
        return file;
    }

    @Test
    void aLibraryOfMoreThingsThanTheMemoryHasRoomForSaysSo() {
        Room small = new Room(10 << 20);
        assertThat(small.tooMany("l.db", 4096)).isEmpty();
        assertThat(new Room(8L << 30).tooMany("l.db", 3_000_000)).isEmpty();
        assertThat(new Room(8L << 30).things())
                .as("what the workbench can open")
                .isEqualTo(new Room(1L << 30).things());
        assertThat(small.tooMany("l.db", 4097).orElseThrow().sentence())
                .isEqualTo("l.db: holds 4,097 things; expected at most 4,096, for which 10 MB of memory have room: give"
                        + " the program more");
    }

    private void execute(Path file, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    @Test
    void refusesATextFile() throws IOException {
        Path file = Files.writeString(folder.resolve("note.txt"), "not a library\n".repeat(100));
        refuses(file, "is no library; expected a file made by Taperwright");
    }

    @Test
    void refusesAnotherProgramsDatabase() throws Exception {
        Path file = folder.resolve("other.db");
        execute(file, "create table recipes (name text)");
        refuses(file, "is a database, but no library; expected a file made by Taperwright");
    }

    @Test
    void refusesAFolder() throws IOException {
        refuses(folder, "is a folder; expected a library's file");
    }

    @Test
    void refusesALibraryOfANewerProgram() throws Exception {
        Path file = library(1);
        execute(
                file,
                "insert into migration select installed_rank + 1, '99', 'from the future', type, 'V99__x.sql', checksum,"
                        + " installed_by, installed_on, execution_time, success from migration"
                        + " order by installed_rank desc limit 1");
        assertThat(open(file))
                .isInstanceOfSatisfying(
                        OpenResult.Refused.class,
                        refused -> assertThat(refused.fault().sentence())
                                .isEqualTo(file + ": was written by a newer Taperwright;"
                                        + " expected that one or a newer one to open it"));
    }

    @Test
    void refusesADamagedLibrary() throws IOException {
        Path file = library(200);
        byte[] bytes = Files.readAllBytes(file);
        Random random = new Random(7);
        for (int i = 4096; i < bytes.length; i++) {
            if (i % 4096 < 200) {
                bytes[i] = (byte) random.nextInt();
            }
        }
        Files.write(file, bytes);
        assertThat(open(file))
                .isInstanceOfSatisfying(
                        OpenResult.Refused.class,
                        refused -> assertThat(refused.fault().sentence()).contains("is damaged"));
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    }

    @Test
    void refusesALibraryThatWasCutShort() throws IOException {
        Path file = library(200);
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        assertThat(open(file))
                .isInstanceOfSatisfying(
                        OpenResult.Refused.class,
                        refused -> assertThat(refused.fault().sentence()).contains("is damaged"));
    }

    @Test
    void goesOnWhereTheMakingOfANewLibraryWasInterrupted() throws Exception {
        Path file = Files.createFile(folder.resolve("empty.db"));
        assertThat(open(file)).isInstanceOf(OpenResult.Opened.class);
        Path marked = folder.resolve("marked.db");
        execute(marked, "pragma application_id = " + 0x54705772);
        assertThat(open(marked)).isInstanceOf(OpenResult.Opened.class);
    }
}
