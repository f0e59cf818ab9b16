package org.taperwright.library.store;

import java.util.Comparator;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** What a user may do in a database on a server, asked of the server itself. */
final class ServerRights {
    private static final String HEAD = PostgresServer.SCHEMA + ".head";

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
                && may(handle, PostgresServer.SCHEMA + ".revision", "INSERT")
                && may(handle, PostgresServer.SCHEMA + ".edit", "INSERT");
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

    /** Every user who may log in, those who may do most first. */
    static List<Member> members(Handle handle) {
        return handle
                .createQuery("""
                        select role.rolname as name,
                            case
                                when role.rolsuper or pg_has_role(role.oid, head.relowner, 'USAGE') then 'OWNER'
                                when not has_schema_privilege(role.oid, head.relnamespace, 'USAGE') then 'NONE'
                                when has_table_privilege(role.oid, head.oid, 'UPDATE') then 'EDITOR'
                                when has_table_privilege(role.oid, head.oid, 'SELECT') then 'READER'
                                else 'NONE'
                            end as held
                        from pg_roles role, pg_class head
                        where role.rolcanlogin and head.oid = cast(:head as regclass)""")
                .bind("head", HEAD)
                .map((row, context) -> new Member(row.getString("name"), Member.Right.valueOf(row.getString("held"))))
                .stream()
                .sorted(Comparator.comparing(Member::right).thenComparing(Member::user))
                .toList();
    }

    /** Gives a user the rights of a reader or an editor, and no more. */
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
        say(handle, user, rights);
    }

    /** Takes every right that was given to a user. */
    static void revoke(Handle handle, String user) {
        String schema = PostgresServer.SCHEMA;
        say(
                handle,
                user,
                List.of(
                        "revoke all on all tables in schema " + schema + " from %I",
                        "alter default privileges in schema " + schema + " revoke select on tables from %I",
                        "revoke all on schema " + schema + " from %I"));
    }

    /** The server quotes the user's name. */
    private static void say(Handle handle, String user, List<String> rights) {
        for (String right : rights) {
            handle.execute(handle.createQuery("select format(cast(:right as text), cast(:user as text))")
                    .bind("right", right)
                    .bind("user", user)
                    .mapTo(String.class)
                    .one());
        }
    }
}
