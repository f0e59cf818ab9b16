package org.taperwright.library.exchange;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import org.taperwright.library.exchange.text.TextSource;

/** Files in memory, for tests. */
public final class Bytes {
    private Bytes() {}

    /** A file of these bytes. */
    public static TextSource source(String name, byte[] bytes) {
        return new TextSource() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public long size() {
                return bytes.length;
            }

            @Override
            public InputStream open() {
                return new ByteArrayInputStream(bytes);
            }
        };
    }
}
