package org.taperwright.library.exchange.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir
    private Path folder;

    @Test
    void aFileTakesThePlaceOfAnotherOnlyWhenItIsWhole() throws IOException {
        Path place = Files.writeString(folder.resolve("f.csv"), "old");
        WholeFile.write(place, out -> {
            out.write("Größe\n");
            out.flush();
            assertThat(place).hasContent("old");
        });
        assertThat(place).hasContent("Größe\n");
        assertThat(folder).isDirectoryContaining(place::equals).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void whenWritingFailsWhatStoodThereStaysAndNothingElseIsLeft() throws IOException {
        Path place = Files.writeString(folder.resolve("f.csv"), "old");
        assertThatThrownBy(() -> WholeFile.write(place, out -> {
                    out.write("half");
                    throw new IOException("disk full");
                }))
                .hasMessage("disk full");
        assertThat(place).hasContent("old");
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void oneThatIsBegunAndSettledIsNotInItsPlaceUntilItIsPutThere() throws IOException {
        Path place = folder.resolve("f.csv");
        try (WholeFile file = WholeFile.begin(place)) {
            file.out().write("rows");
            file.settle();
            assertThat(place).doesNotExist();
            assertThat(file.part()).hasContent("rows");
            file.put();
        }
        assertThat(place).hasContent("rows");
    }

    @Test
    void othersMayReadItAsTheyMayAnyNewFile() throws IOException {
        Path place = folder.resolve("f.csv");
        WholeFile.write(place, out -> out.write("x"));
        Path plain = Files.writeString(folder.resolve("plain.csv"), "x");
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            assertThat(Files.getPosixFilePermissions(place)).isEqualTo(Files.getPosixFilePermissions(plain));
        }
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        assertThatThrownBy(() -> WholeFile.write(folder.resolve("none/f.csv"), out -> out.write("x")))
                .isInstanceOf(NoSuchFileException.class);
    }
}
