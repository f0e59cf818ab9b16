package org.taperwright.library.exchange.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A text that can be opened anew each time it is read. */
public interface TextSource {
    /** The name for messages. */
    String name();

    /** How many bytes it has; 0 when that is not known. */
    long size();

    /** Opens it at its beginning. */
    InputStream open() throws IOException;

    /** A file. */
    static TextSource of(Path file) {
        return new TextSource() {
            @Override
            public String name() {
                return file.toString();
            }

            @Override
            public long size() {
                return file.toFile().length();
            }

            @Override
            public InputStream open() throws IOException {
                return Files.newInputStream(file);
            }
        };
    }
}
