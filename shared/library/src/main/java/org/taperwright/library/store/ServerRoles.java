package org.taperwright.library.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.taperwright.mechanics.work.Fault;

/**
 * Says who may read and who may edit a shared library, and changes it. The server itself holds the users to it; making users
 * is for whoever runs the server. Each call opens a connection of its own and may take some seconds.
 */
public final class ServerRoles {
    private ServerRoles() {}

    /** Who may do what. Anyone who may read the library may ask. */
    public static Members members(ServerSettings settings, Password password) {
        try (Connection connection = new PostgresServer(settings, password).connect()) {
            return Jdbi.create(connection).inTransaction(handle -> {
                if (!ServerRights.holdsLibrary(handle)) {
                    return new Members.Refused(noLibrary());
                }
                List<Member> members = ServerRights.members(handle).stream()
                        .sorted(Comparator.comparing(Member::rights).thenComparing(Member::user))
                        .toList();
                return new Members.Listed(members, ServerRights.owns(handle));
            });
        } catch (SQLException | JdbiException failure) {
            return new Members.Refused(ConnectionTests.fault(settings, failure));
        }
    }

    /**
     * Lets a user of the server read a library, or edit it too; an editor made a reader edits no longer. For the library's
     * owner.
     *
     * @return why not; empty when done
     */
    public static Optional<Fault> grant(ServerSettings settings, Password password, String user, Access access) {
        Member.Rights wanted = access == Access.EDITOR ? Member.Rights.EDITOR : Member.Rights.READER;
        return change(settings, password, user, wanted, handle -> ServerRights.grant(handle, user, access));
    }

    /**
     * Takes all rights to a library from a user; what the user did stays in the library's past. For the library's owner.
     *
     * @return why not; empty when done
     */
    public static Optional<Fault> revoke(ServerSettings settings, Password password, String user) {
        return change(settings, password, user, Member.Rights.NONE, handle -> ServerRights.revoke(handle, user));
    }

    private interface Change {
        void in(Handle handle);
    }

    private static Optional<Fault> change(
            ServerSettings settings, Password password, String user, Member.Rights wanted, Change change) {
        try (Connection connection = new PostgresServer(settings, password).connect()) {
            return Jdbi.create(connection).inTransaction(handle -> {
                Optional<Fault> reason = reasonNotTo(handle, user);
                if (reason.isEmpty()) {
                    change.in(handle);
                    reason = stillMore(handle, user, wanted);
                    reason.ifPresent(fault -> handle.rollback());
                }
                return reason;
            });
        } catch (SQLException | JdbiException failure) {
            return Optional.of(ConnectionTests.fault(settings, failure));
        }
    }

    private static Optional<Fault> reasonNotTo(Handle handle, String user) {
        if (!ServerRights.holdsLibrary(handle)) {
            return Optional.of(noLibrary());
        }
        if (!ServerRights.owns(handle)) {
            return Optional.of(Fault.impossible(
                    "user", "does not own the library", "expected the one who made it to give rights"));
        }
        Optional<Member> member = member(handle, user);
        if (member.isEmpty()) {
            return Optional.of(Fault.impossible("user", "found \"" + user + '"', "expected a user the server knows"));
        }
        return member.get().rights() == Member.Rights.OWNER
                ? Optional.of(Fault.impossible(
                        "user", "\"" + user + "\" owns the library and may do everything", "expected another user"))
                : Optional.empty();
    }

    /** Rights that come from a group, or that everyone has, are not taken from a user alone. */
    private static Optional<Fault> stillMore(Handle handle, String user, Member.Rights wanted) {
        Member.Rights now = member(handle, user).map(Member::rights).orElse(Member.Rights.NONE);
        return now == wanted
                ? Optional.empty()
                : Optional.of(Fault.impossible(
                        "user",
                        "\"" + user + "\" would still be " + now.word() + " by a group that it belongs to",
                        "expected whoever runs the server to take it out of the group"));
    }

    private static Optional<Member> member(Handle handle, String user) {
        return ServerRights.members(handle).stream()
                .filter(each -> each.user().equals(user))
                .findFirst();
    }

    private static Fault noLibrary() {
        return Fault.impossible("database", "holds no library", "expected one");
    }
}
