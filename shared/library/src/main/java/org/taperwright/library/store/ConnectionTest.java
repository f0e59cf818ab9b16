package org.taperwright.library.store;

import org.taperwright.mechanics.work.Fault;

/** What came of trying to reach a shared library. */
public sealed interface ConnectionTest {
    /**
     * The library can be opened.
     *
     * @param server the server's product and version
     * @param made whether the database holds a library; if not, opening makes one
     * @param access what the user may do
     * @param things how many things it holds
     */
    record Passed(String server, boolean made, Access access, long things) implements ConnectionTest {}

    /** It cannot, and why: which setting is wrong, and what was expected. */
    record Failed(Fault fault) implements ConnectionTest {}
}
