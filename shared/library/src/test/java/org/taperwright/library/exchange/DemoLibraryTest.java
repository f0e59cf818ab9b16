package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.Examples;

class DemoLibraryTest {
    @TempDir
    private Path root;

    private Path folder;

    @BeforeEach
    void makeFolder() throws IOException {
        folder = Files.createDirectories(root.resolve(DemoLibrary.INDEX).getParent());
    }

    private ReadResult load() throws IOException {
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {root.toUri().toURL()}, ClassLoader.getPlatformClassLoader())) {
            return DemoLibrary.load(loader);
        }
    }

    private void put(String name, String text) throws IOException {
        Files.createDirectories(folder.resolve(name).getParent());
        Files.writeString(folder.resolve(name), text);
    }

    private List<String> faults() throws IOException {
        ReadResult result = load();
        assertThat(result).isInstanceOf(ReadResult.Refused.class);
        return ((ReadResult.Refused) result)
                .faults().stream().map(FileFault::sentence).toList();
    }

    private void index(String files) throws IOException {
        put("index.json", "{\"form\": \"taperwright/index\", \"version\": 1, \"files\": [" + files + "]}");
    }

    @Test
    void theFilesOfTheIndexAreReadAsOneBundle() throws IOException {
        index("\"first.json\", \"more/second.json\"");
        put("first.json", JsonForms.write(Examples.COMPARISON_ID, Examples.comparison()));
        put("more/second.json", JsonForms.write(Examples.DESIGN_ID, Examples.design()));
        assertThat(load()).isInstanceOfSatisfying(ReadResult.Read.class, read -> {
            assertThat(read.remarks()).isEmpty();
            assertThat(read.bundle().items())
                    .containsExactly(
                            new LibraryBundle.Item(Examples.COMPARISON_ID, Examples.comparison()),
                            new LibraryBundle.Item(Examples.DESIGN_ID, Examples.design()));
        });
    }

    @Test
    void withoutAnIndexThereIsNoDemoLibrary() throws IOException {
        assertThat(faults()).containsExactly(DemoLibrary.INDEX + ":1:1: file: is not here; expected the demo library");
    }

    @Test
    void aFileNamedButAbsentIsAFault() throws IOException {
        index("\"absent.json\"");
        assertThat(faults())
                .containsExactly(DemoLibrary.INDEX + ":1:1: files: names absent.json; expected a file that is there");
    }

    @Test
    void aSpoiltIndexIsAFault() throws IOException {
        put("index.json", "{\"form\": \"taperwright/index\", \"version\": 1, \"files\": 7}");
        assertThat(faults()).containsExactly(DemoLibrary.INDEX + ":1:54: files: found 7; expected a list […]");
        put("index.json", "{");
        assertThat(faults())
                .singleElement()
                .satisfies(sentence -> assertThat(sentence).contains("ends in the middle"));
    }

    @Test
    void aSpoiltFileIsNamed() throws IOException {
        index("\"first.json\"");
        put("first.json", "{}");
        assertThat(faults())
                .singleElement()
                .satisfies(sentence -> assertThat(sentence).startsWith("first.json:1:1: form: is missing"));
    }
}
