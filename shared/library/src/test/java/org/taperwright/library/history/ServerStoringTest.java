package org.taperwright.library.history;

import org.taperwright.library.TestDatabase;

class ServerStoringTest extends StoringContract {
    @Override
    TestDatabase database() {
        return TestDatabase.onServer();
    }

    @Override
    void breakStore(TestDatabase at, boolean broken) {
        at.execute(
                broken
                        ? "create trigger broken before insert on edit execute function refuse('broken')"
                        : "drop trigger broken on edit");
    }
}
