package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Files kept beside the code that must equal what the code makes. After a deliberate change, run the tests with
 * {@code -Dgolden.write=true} and read the difference before committing it.
 */
final class PublishedFiles {
    static final Path SCHEMAS = Path.of("src/main/resources/org/taperwright/library/exchange/schema");
    static final Path GOLDEN = Path.of("src/test/resources/org/taperwright/library/exchange/golden");

    private PublishedFiles() {}

    static void holds(Path file, String made) throws IOException {
        if (Boolean.getBoolean("golden.write")) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, made);
        }
        assertThat(file).exists();
        assertThat(Files.readString(file)).as(file.toString()).isEqualTo(made);
    }
}
