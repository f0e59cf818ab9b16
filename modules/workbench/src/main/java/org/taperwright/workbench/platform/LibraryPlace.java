package org.taperwright.workbench.platform;

import java.nio.file.Path;

/**
 * Where the user's library lies: {@code .taperwright/library.sqlite} in the home folder, or where
 * {@code -J-Dtaperwright.library=PATH} says.
 */
final class LibraryPlace {
    private static final String PROPERTY = "taperwright.library";

    private LibraryPlace() {}

    /** Whether a file was named for this start; it goes before a server that is chosen. */
    static boolean named() {
        return System.getProperty(PROPERTY) != null;
    }

    static Path file() {
        String said = System.getProperty(PROPERTY);
        return said == null
                ? Path.of(System.getProperty("user.home"), ".taperwright", "library.sqlite")
                : Path.of(said);
    }
}
