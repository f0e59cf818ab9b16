package org.taperwright.library.store;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.TestDatabase;

class SearchTest extends SearchContract {
    @TempDir
    private Path folder;

    @Override
    TestDatabase database() {
        return TestDatabase.inFile(folder);
    }
}
