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
                .endsWith("Sound: 1 things, 1 revisions, 2 findings." + System.lineSeparator());
    }

    @Test
    void aBrokenLibraryEndsWithTwoAndSaysHowToMendIt() throws IOException {
        Files.writeString(file, "no library any more");
        Ran ran = Ran.with("library", "check", file.toString());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out())
                .contains("wrong: " + file + ": is no library; expected a file made by Taperwright")
                .contains("Restore a backup of the library");
    }

    @Test
    void aLibraryWithoutAFileIsAskedFor() {
        Ran ran = Ran.with("library", "check");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("FILE");
    }
}
