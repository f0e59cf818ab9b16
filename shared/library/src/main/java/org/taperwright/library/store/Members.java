package org.taperwright.library.store;

import java.util.List;
import org.taperwright.mechanics.work.Fault;

/** What came of asking who may do what with a shared library. */
public sealed interface Members {
    /**
     * Asked.
     *
     * @param members all users that can log in to the server: those with the most rights first, then by name
     * @param mayGive whether who asked may give rights and take them
     */
    record Listed(List<Member> members, boolean mayGive) implements Members {
        public Listed {
            members = List.copyOf(members);
        }
    }

    /** Not asked, and why. */
    record Refused(Fault fault) implements Members {}
}
