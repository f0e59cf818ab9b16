package org.taperwright.library.store;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** What a user may do in a database on a server, asked of the server itself. */
final class ServerRights {
    private static final String HEAD = PostgresServer.SCHEMA + ".head";
    private static final String REVISION = PostgresServer.SCHEMA + ".revision";
    private static final String EDIT = PostgresServer.SCHEMA + ".edit";

    private ServerRights() {}

    static boolean holdsLibrary(Handle handle) {
        return asked(handle, "select exists (select from pg_tables where schemaname = :schema and tablename = 'head')");
    }

    static boolean mayMake(Handle handle) {
        return asked(handle, "select has_database_privilege(current_database(), 'CREATE') and :schema <> ''");
    }

    static boolean owns(Handle handle) {
        return asked(
                handle,
                "select coalesce(bool_and(pg_has_role(tableowner, 'USAGE')), false) from pg_tables"
                        + " where schemaname = :schema");
    }

    /** Whether at least the present can be read. */
    static boolean mayRead(Handle handle) {
        return asked(handle, "select has_schema_privilege(:schema, 'USAGE')")
                && may(handle, HEAD, "SELECT")
                && may(handle, PostgresServer.SCHEMA + ".present_thing", "SELECT");
    }

    static Access access(Handle handle) {
        boolean edits = may(handle, HEAD, "UPDATE")
                && may(handle, HEAD, "INSERT")
                && may(handle, REVISION, "INSERT")
                && may(handle, EDIT, "INSERT");
        return edits ? Access.EDITOR : Access.READER;
    }

    private static boolean asked(Handle handle, String question) {
        return handle.createQuery(question)
                .bind("schema", PostgresServer.SCHEMA)
                .mapTo(Boolean.class)
                .one();
    }

    private static boolean may(Handle handle, String table, String right) {
        return handle.createQuery("select has_table_privilege(:table, :right)")
                .bind("table", table)
                .bind("right", right)
                .mapTo(Boolean.class)
                .one();
    }

    /** All users that can log in, and what each may do; one that may do everything on the server counts as an owner. */
    static List<Member> members(Handle handle) {
        return handle.createQuery("select role.rolname as name,"
                        + " pg_has_role(role.oid, head.tableowner, 'USAGE') as owns,"
                        + " has_schema_privilege(role.oid, :schema, 'USAGE') as enters,"
                        + " has_table_privilege(role.oid, :head, 'SELECT') as reads,"
                        + " has_table_privilege(role.oid, :head, 'INSERT')"
                        + " and has_table_privilege(role.oid, :head, 'UPDATE')"
                        + " and has_table_privilege(role.oid, :revision, 'INSERT')"
                        + " and has_table_privilege(role.oid, :edit, 'INSERT') as edits"
                        + " from pg_roles role, pg_tables head"
                        + " where role.rolcanlogin and head.schemaname = :schema and head.tablename = 'head'")
                .bind("schema", PostgresServer.SCHEMA)
                .bind("head", HEAD)
                .bind("revision", REVISION)
                .bind("edit", EDIT)
                .map((row, context) -> new Member(
                        row.getString("name"),
                        rights(
                                row.getBoolean("owns"),
                                row.getBoolean("enters") && row.getBoolean("reads"),
                                row.getBoolean("edits"))))
                .list();
    }

    private static Member.Rights rights(boolean owns, boolean reads, boolean edits) {
        if (owns) {
            return Member.Rights.OWNER;
        }
        if (!reads) {
            return Member.Rights.NONE;
        }
        return edits ? Member.Rights.EDITOR : Member.Rights.READER;
    }

    /** Gives a user the rights of a reader or an editor, and no more. The server quotes the user's name. */
    static void grant(Handle handle, String user, Access access) {
        String schema = PostgresServer.SCHEMA;
        List<String> rights = access == Access.EDITOR
                ? List.of(
                        "grant usage on schema " + schema + " to %I",
                        "grant select on all tables in schema " + schema + " to %I",
                        "alter default privileges in schema " + schema + " grant select on tables to %I",
                        "grant insert on " + schema + ".edit, " + schema + ".revision to %I",
                        "grant insert, update on " + schema + ".head to %I")
                : List.of(
                        "revoke all on all tables in schema " + schema + " from %I",
                        "grant usage on schema " + schema + " to %I",
                        "alter default privileges in schema " + schema + " grant select on tables to %I",
                        "grant select on all tables in schema " + schema + " to %I");
        each(handle, rights, user);
    }

    /** Takes all rights from a user. */
    static void revoke(Handle handle, String user) {
        String schema = PostgresServer.SCHEMA;
        each(
                handle,
                List.of(
                        "alter default privileges in schema " + schema + " revoke all on tables from %I",
                        "revoke all on all tables in schema " + schema + " from %I",
                        "revoke all on schema " + schema + " from %I"),
                user);
    }

    private static void each(Handle handle, List<String> statements, String user) {
        for (String right : statements) {
            handle.execute(handle.createQuery("select format(cast(:right as text), cast(:user as text))")
                    .bind("right", right)
                    .bind("user", user)
                    .mapTo(String.class)
                    .one());
        }
    }
}
