package org.taperwright.library.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.taperwright.mechanics.work.Fault;

/**
 * Says who may read and who may edit a shared library. The server itself holds the users to it; making users is for
 * whoever runs the server.
 */
public final class ServerRoles {
    private ServerRoles() {}

    /**
     * Lets a user of the server read a library, or edit it too. For the library's owner.
     *
     * @return why not; empty when done
     */
    public static Optional<Fault> grant(ServerSettings settings, Password password, String user, Access access) {
        try (Connection connection = new PostgresServer(settings, password).connect()) {
            return Jdbi.create(connection).inTransaction(handle -> {
                if (!ServerRights.holdsLibrary(handle) || !ServerRights.owns(handle)) {
                    return Optional.of(Fault.impossible(
                            "user", "does not own the library", "expected the one who made it to give rights"));
                }
                ServerRights.grant(handle, user, access);
                return Optional.empty();
            });
        } catch (SQLException | JdbiException failure) {
            boolean unknown = PostgresFaults.refusal(failure)
                    .filter(refusal -> PostgresFaults.state(refusal).equals("42704"))
                    .isPresent();
            return Optional.of(
                    unknown
                            ? Fault.impossible("user", "found \"" + user + '"', "expected a user the server knows")
                            : ConnectionTests.fault(settings, failure));
        }
    }
}
