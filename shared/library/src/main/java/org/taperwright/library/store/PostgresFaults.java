package org.taperwright.library.store;

import java.net.ConnectException;
import java.net.NoRouteToHostException;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.sql.SQLException;
import java.util.Optional;
import javax.net.ssl.SSLException;

/** Says PostgreSQL's refusals in plain words (codes: PostgreSQL documentation, appendix A, "PostgreSQL Error Codes"). */
final class PostgresFaults {
    private PostgresFaults() {}

    /** What went wrong, in words that follow "the library". */
    static String what(Throwable failure) {
        return refusal(failure).map(PostgresFaults::ofRefusal).orElse("failed (" + failure.getMessage() + ")");
    }

    private static String ofRefusal(SQLException refusal) {
        String state = state(refusal);
        return switch (state) {
            case "42501" -> "may not be changed by you: its owner has let you read only";
            case "22P02" -> "failed (a form must be JSON)";
            case "53100" -> "has no room: the server's disk is full";
            case "53300" -> "cannot be reached: the server serves too many already";
            case "55P03", "40001", "40P01" -> "is held by another program";
            case "25006" -> "may not be written: the server is read-only";
            case "42P01", "3F000" -> "is not there: the database holds no library";
            default -> broken(state) ? link(refusal) : "failed (" + firstLine(refusal) + ")";
        };
    }

    /** Whether the connection is of no more use. */
    static boolean lost(Throwable failure) {
        return refusal(failure).filter(each -> broken(state(each))).isPresent();
    }

    /** Classes 08 (connection exceptions) and 57P (stopped by its operator). */
    private static boolean broken(String state) {
        return state.startsWith("08") || state.startsWith("57P");
    }

    /** Why a connection that was there, or was tried, is not. */
    static String link(Throwable failure) {
        if (caused(failure, UnknownHostException.class)) {
            return "cannot be reached: no server of that name is known";
        }
        if (caused(failure, SSLException.class)) {
            return "cannot be reached: the server's certificate was not accepted";
        }
        if (caused(failure, SocketTimeoutException.class) || caused(failure, NoRouteToHostException.class)) {
            return "cannot be reached: the server does not answer";
        }
        if (caused(failure, ConnectException.class)) {
            return "cannot be reached: nothing answers at that port";
        }
        return "cannot be reached: the link to the server is lost";
    }

    static boolean caused(Throwable failure, Class<? extends Throwable> type) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (type.isInstance(cause)) {
                return true;
            }
        }
        return false;
    }

    /** The server's refusal among the causes. */
    static Optional<SQLException> refusal(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException refusal && refusal.getSQLState() != null) {
                return Optional.of(refusal);
            }
        }
        return Optional.empty();
    }

    static String state(SQLException refusal) {
        return String.valueOf(refusal.getSQLState());
    }

    static String firstLine(SQLException refusal) {
        return String.valueOf(refusal.getMessage()).lines().findFirst().orElse("");
    }
}
