package org.taperwright.library.store;

import org.taperwright.library.TestDatabase;

class ServerSearchTest extends SearchContract {
    @Override
    TestDatabase database() {
        return TestDatabase.onServer();
    }
}
