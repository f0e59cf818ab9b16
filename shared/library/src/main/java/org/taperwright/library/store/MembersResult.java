package org.taperwright.library.store;

import java.util.List;
import org.taperwright.mechanics.work.Fault;

/** What came of asking a server who may use a library. */
public sealed interface MembersResult {
    /**
     * Every user of the server who may log in, those who may do most first.
     *
     * @param members the users
     */
    record Listed(List<Member> members) implements MembersResult {
        public Listed {
            members = List.copyOf(members);
        }
    }

    /** Why it was not told. */
    record Refused(Fault fault) implements MembersResult {}
}
