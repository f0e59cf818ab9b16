package org.taperwright.library.exchange.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A table that can be opened anew each time it is read. */
public interface TextSource {
    /** The name for messages. */
    String name();

    /** How many bytes it has; 0 when that is not known. */
    long size() throws IOException;

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
            public long size() throws IOException {
                return Files.size(file);
            }

            @Override
            public InputStream open() throws IOException {
                return Files.newInputStream(file);
            }
        };
    }
}
