package org.taperwright.library.history;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.TestDatabase;

class StoringTest extends StoringContract {
    @TempDir
    private Path folder;

    @Override
    TestDatabase database() {
        return TestDatabase.inFile(folder);
    }

    @Override
    void breakStore(TestDatabase at, boolean broken) {
        at.execute(
                broken
                        ? "create trigger broken before insert on edit begin select raise(abort, 'broken'); end"
                        : "drop trigger broken");
    }
}
