package org.taperwright.library.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.taperwright.mechanics.work.Fault;

/**
 * Says who may read and who may edit a shared library. The server itself holds the users to it; making users is for
 * whoever runs the server.
 */
public final class ServerRoles {
    private ServerRoles() {}

    /** Who may use a library, and who else could be let. For the library's owner. */
    public static MembersResult members(ServerSettings settings, Password password) {
        try (Connection connection = new PostgresServer(settings, password).connect()) {
            return Jdbi.create(connection)
                    .withHandle(handle -> refusal(handle)
                            .<MembersResult>map(MembersResult.Refused::new)
                            .orElseGet(() -> new MembersResult.Listed(ServerRights.members(handle))));
        } catch (SQLException | JdbiException failure) {
            return new MembersResult.Refused(ConnectionTests.fault(settings, failure));
        }
    }

    /**
     * Lets a user of the server read a library, or edit it too. For the library's owner.
     *
     * @return why not; empty when done
     */
    public static Optional<Fault> grant(ServerSettings settings, Password password, String user, Access access) {
        return change(settings, password, handle -> ServerRights.grant(handle, user, access), user);
    }

    /**
     * Takes from a user of the server every right to a library. For the library's owner. What a user may do as a member of
     * a group of the server's stays.
     *
     * @return why not; empty when done
     */
    public static Optional<Fault> revoke(ServerSettings settings, Password password, String user) {
        return change(settings, password, handle -> ServerRights.revoke(handle, user), user);
    }

    private static Optional<Fault> change(
            ServerSettings settings, Password password, Consumer<Handle> change, String user) {
        try (Connection connection = new PostgresServer(settings, password).connect()) {
            return Jdbi.create(connection).inTransaction(handle -> {
                Optional<Fault> refusal = refusal(handle);
                if (refusal.isEmpty()) {
                    change.accept(handle);
                }
                return refusal;
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

    private static Optional<Fault> refusal(Handle handle) {
        return ServerRights.holdsLibrary(handle) && ServerRights.owns(handle)
                ? Optional.empty()
                : Optional.of(Fault.impossible(
                        "user", "does not own the library", "expected the one who made it to give rights"));
    }
}
