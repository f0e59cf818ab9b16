package org.taperwright.library.store;

import java.sql.Connection;
import java.sql.SQLException;
import org.jdbi.v3.core.Handle;

/** Where a library lies: what differs between one database and another. */
interface Database {
    /** A new connection, ready for use. */
    Connection connect() throws SQLException;

    /** Keeps other programs from storing until the transaction ends; the first thing done in it. */
    void beginStoring(Handle handle);

    /** What the user may do. */
    Access access(Handle handle);

    /** What went wrong, in plain words that follow "the library". */
    String what(Throwable failure);

    /** Whether the connection is of no more use after a failure, and a new one may be. */
    boolean lost(Throwable failure);
}
