package org.taperwright.library.store;

import java.net.ConnectException;
import java.net.NoRouteToHostException;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.SQLException;
import javax.net.ssl.SSLException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.taperwright.mechanics.work.Fault;

/** Tries to reach a shared library, changing nothing, and says which setting is wrong. May take some seconds. */
public final class ConnectionTests {
    private ConnectionTests() {}

    /** Tries. */
    public static ConnectionTest of(ServerSettings settings, Password password) {
        if (!settings.faults().isEmpty()) {
            return new ConnectionTest.Failed(settings.faults().get(0));
        }
        try (Connection connection = new PostgresServer(settings, password).connect()) {
            DatabaseMetaData server = connection.getMetaData();
            String version = server.getDatabaseProductName() + ' ' + server.getDatabaseProductVersion();
            if (server.getDatabaseMajorVersion() < PostgresServer.OLDEST) {
                return failed("host", "runs " + version, "expected version " + PostgresServer.OLDEST + " or newer");
            }
            return Jdbi.create(connection).withHandle(handle -> ofDatabase(handle, version));
        } catch (SQLException | JdbiException failure) {
            return new ConnectionTest.Failed(fault(settings, failure));
        }
    }

    private static ConnectionTest ofDatabase(Handle handle, String version) {
        if (!ServerRights.holdsLibrary(handle)) {
            return ServerRights.mayMake(handle)
                    ? new ConnectionTest.Passed(version, false, Access.EDITOR, 0)
                    : failed("database", "holds no library yet", "expected one, or the right to make one there");
        }
        if (!ServerRights.mayRead(handle)) {
            return new ConnectionTest.Failed(mayNotRead());
        }
        long things = handle.createQuery("select count(*) from present_thing")
                .mapTo(Long.class)
                .one();
        return new ConnectionTest.Passed(version, true, ServerRights.access(handle), things);
    }

    static Fault mayNotRead() {
        return Fault.impossible("user", "may not read the library", "expected its owner to let you read or edit it");
    }

    private static ConnectionTest failed(String where, String what, String expected) {
        return new ConnectionTest.Failed(Fault.impossible(where, what, expected));
    }

    /** Which setting a failure to connect is to be blamed on. */
    static Fault fault(ServerSettings settings, Throwable failure) {
        if (PostgresFaults.caused(failure, UnknownHostException.class)) {
            return Fault.impossible(
                    "host", "found \"" + settings.host() + '"', "expected a server that is known by it");
        }
        if (PostgresFaults.caused(failure, SSLException.class)) {
            return Fault.impossible(
                    "encryption", "the server's certificate was not accepted", "expected one this machine trusts");
        }
        if (PostgresFaults.caused(failure, SocketTimeoutException.class)
                || PostgresFaults.caused(failure, NoRouteToHostException.class)) {
            return Fault.impossible("host", "does not answer", "expected a server in reach, not behind a firewall");
        }
        if (PostgresFaults.caused(failure, ConnectException.class)) {
            return Fault.impossible(
                    "port", "nothing answers at " + settings.port(), "expected the port the server listens on");
        }
        return PostgresFaults.refusal(failure)
                .map(refusal -> ofRefusal(settings, refusal))
                .orElseGet(() -> Fault.impossible(
                        PostgresServer.where(settings),
                        "failed (" + failure.getMessage() + ")",
                        "expected a shared library"));
    }

    private static Fault ofRefusal(ServerSettings settings, SQLException refusal) {
        return switch (PostgresFaults.state(refusal)) {
            case "28P01" ->
                Fault.impossible(
                        "password", "was not accepted", "expected that of the user \"" + settings.user() + '"');
            case "28000" ->
                Fault.impossible(
                        "user",
                        "\"" + settings.user() + "\" is not let in",
                        "expected a user the server knows and lets in from here, encrypted if it asks for that");
            case "3D000" ->
                Fault.impossible("database", "found \"" + settings.database() + '"', "expected one the server holds");
            case "42501" -> Fault.impossible("user", "has not the right", "expected the library's owner to give it");
            case "08004" ->
                PostgresFaults.firstLine(refusal).contains("SSL")
                        ? Fault.impossible(
                                "encryption",
                                "is not offered by the server",
                                "expected a server that encrypts, or none")
                        : Fault.impossible("password", "is missing", "expected that of the user named");
            default ->
                Fault.impossible(
                        PostgresServer.where(settings),
                        PostgresFaults.lost(refusal)
                                ? PostgresFaults.link(refusal) + " (" + PostgresFaults.firstLine(refusal) + ")"
                                : PostgresFaults.what(refusal),
                        "expected a shared library");
        };
    }
}
