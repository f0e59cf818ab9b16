package org.taperwright.library;

import java.nio.file.Path;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;

/** Opens libraries for tests. */
public final class TestLibrary {
    private TestLibrary() {}

    public static LibraryStore open(Path file) {
        OpenResult result = LibraryStore.open(file, JsonForms.forStore());
        if (result instanceof OpenResult.Opened opened) {
            return opened.store();
        }
        throw new AssertionError(((OpenResult.Refused) result).fault().sentence());
    }
}
