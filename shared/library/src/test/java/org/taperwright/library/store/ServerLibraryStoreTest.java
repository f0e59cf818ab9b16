package org.taperwright.library.store;

import org.taperwright.library.TestDatabase;

class ServerLibraryStoreTest extends LibraryStoreContract {
    @Override
    TestDatabase database() {
        return TestDatabase.onServer();
    }
}
