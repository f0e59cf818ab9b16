package org.taperwright.workbench.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class LibraryPlaceTest {
    @AfterEach
    void sayNothing() {
        System.clearProperty("taperwright.library");
    }

    @Test
    void theLibraryLiesInTheHomeFolder() {
        Path home = Path.of(System.getProperty("user.home"));
        assertThat(LibraryPlace.file()).isEqualTo(home.resolve(".taperwright").resolve("library.sqlite"));
    }

    @Test
    void aPropertyPutsItElsewhere() {
        System.setProperty("taperwright.library", "elsewhere/lab.sqlite");
        assertThat(LibraryPlace.file()).isEqualTo(Path.of("elsewhere", "lab.sqlite"));
    }
}
