package org.taperwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.BackupPolicy;
import org.taperwright.library.store.Backups;
import org.taperwright.library.store.Draft;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

class CheckLibraryTest {
    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void fill() {
        file = folder.resolve("library.sqlite");
        OpenResult.Opened opened = (OpenResult.Opened) LibraryStore.open(file, JsonForms.forStore());
        try (LibraryStore store = opened.store()) {
            ThingId absent = new ThingId("absent");
            SavedComparison comparison = new SavedComparison("Alone", List.of(absent), absent, "");
            store.append(
                    "Add",
                    "someone",
                    Instant.EPOCH,
                    List.of(new Draft(new ThingId("alone"), ThingKind.COMPARISON, Optional.of(comparison), 0)));
        }
    }

    @Test
    void aSoundLibraryEndsWithNoughtAndSaysWhatDeservesALook() {
        Ran ran = Ran.with("library", "check", file.toString());
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("look at: comparison alone, datum: refers to \"absent\", which is not in the library;"
                        + " expected a design")
                .endsWith("Sound: 1 thing, 1 revision, 2 findings." + System.lineSeparator());
    }

    @Test
    void aBrokenLibraryEndsWithTwoAndSaysHowToMendIt() throws IOException {
        Files.writeString(file, "no library any more");
        Ran ran = Ran.with("library", "check", file.toString());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out())
                .contains("wrong: " + file + ": is no library; expected a file made by Taperwright")
                .contains("restore a backup of it", "No whole backup of it lies in " + folder.resolve("backups"));
    }

    @Test
    void theBackupsOfABrokenLibraryAreNamed() throws IOException {
        Backups backups = new Backups(file, folder.resolve("backups"), JsonForms.forStore(), BackupPolicy.USUAL);
        backups.take(Instant.parse("2026-01-02T03:04:05Z"));
        Files.writeString(file, "no library any more");
        assertThat(Ran.with("library", "check", file.toString()).out())
                .contains(
                        folder.resolve("backups/library.sqlite.20260102T030405Z.backup") + ": 1 thing, 1 revision",
                        "By hand: end every program that uses the library");
    }

    @Test
    void aLibraryThatIsGoneIsSaidWithItsBackups() throws IOException {
        Ran none = Ran.with("library", "check", folder.resolve("other.sqlite").toString());
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.out()).isEmpty();
        assertThat(none.err()).contains("other.sqlite: is no file; expected a library's file");
        Backups backups = new Backups(file, folder.resolve("backups"), JsonForms.forStore(), BackupPolicy.USUAL);
        backups.take(Instant.parse("2026-01-02T03:04:05Z"));
        Files.delete(file);
        assertThat(Ran.with("library", "check", file.toString()).out())
                .contains("library.sqlite.20260102T030405Z.backup: 1 thing, 1 revision");
    }

    @Test
    void aLibraryWithoutAFileIsAskedFor() {
        Ran ran = Ran.with("library", "check");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("FILE");
    }
}
