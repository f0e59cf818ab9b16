package org.taperwright.library.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.LongStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;

/**
 * A library in a file or on a server. Revisions are only ever added, several in one transaction; an edit that returned is
 * safe. May be called from any thread, one call at a time going through. Every method may throw {@link StoreFailure}; after
 * one for a lost link to the server the next call makes a new link.
 */
public final class LibraryStore implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(LibraryStore.class.getName());
    private static final int ASKED_AT_ONCE = 500;

    /** A server sends rows in portions of this size, instead of all together. */
    static final int FETCHED_AT_ONCE = 1000;

    private final Database database;
    private final ThingForms forms;
    private final Rows rows;
    private Optional<Connection> link;
    private boolean closed;

    LibraryStore(Database database, ThingForms forms) throws SQLException {
        this.database = database;
        this.link = Optional.of(database.connect());
        this.forms = forms;
        this.rows = new Rows(forms);
    }

    /**
     * Opens a library's file, makes a new one where there is none, and brings an older one up to date. A file that is no
     * library, is damaged or was written by a newer program is left as it was.
     */
    public static OpenResult open(Path file, ThingForms forms) {
        return withRoom(file.toString(), new SqliteFile(file).open(forms));
    }

    /**
     * Opens a shared library on a PostgreSQL server, makes it where the database holds none and the user may, and brings an
     * older one up to date if the user owns it.
     */
    public static OpenResult open(ServerSettings settings, Password password, ThingForms forms) {
        return withRoom(PostgresServer.where(settings), new PostgresServer(settings, password).open(forms));
    }

    private static OpenResult withRoom(String where, OpenResult result) {
        if (result instanceof OpenResult.Opened opened) {
            Optional<Fault> tooMany =
                    Room.ofThisProgram().tooMany(where, opened.store().count("head"));
            if (tooMany.isPresent()) {
                opened.store().close();
                return new OpenResult.Refused(tooMany.get());
            }
        }
        return result;
    }

    /** What the user may do. */
    public Access access() {
        return inTransaction(database::access);
    }

    /** Why a thing could not be kept; empty when it can. */
    public List<Fault> faults(ThingId id, Record thing) {
        return forms.faults(id, thing);
    }

    /** Everything as it stands. */
    public Contents contents() {
        return inTransaction(handle -> {
            FormReading reading = new FormReading(forms);
            handle.createQuery(Rows.SELECT_HEADS)
                    .setFetchSize(FETCHED_AT_ONCE)
                    .map((row, context) -> StoredRow.of(row))
                    .forEach(reading::add);
            Map<ThingId, Long> heads = new HashMap<>();
            List<Entry> entries = new ArrayList<>();
            List<Revision> unreadable = new ArrayList<>();
            reading.finish(revision -> {
                heads.put(revision.id(), revision.revision());
                if (revision.content() instanceof Content.Present present) {
                    entries.add(new Entry(
                            revision.id(), present.thing(), revision.revision(), revision.at(), revision.edit()));
                } else if (revision.content() instanceof Content.Unreadable) {
                    unreadable.add(revision);
                }
            });
            return new Contents(new Snapshot(last(handle, "revision"), entries), heads, unreadable);
        });
    }

    /** As {@link #append(EditToken, String, String, Instant, List)} of an edit that will not be sent again. */
    public AppendResult append(String edit, String who, Instant at, List<Draft> drafts) {
        return append(EditToken.fresh(), edit, who, at, drafts);
    }

    /**
     * Stores an edit, all of it or nothing. One that is stored already, because its answer was lost, is not stored again.
     *
     * @param token what tells the edit from every other
     * @param edit its name
     * @param who who made it
     * @param at when
     * @param drafts its changes, each thing once
     */
    public AppendResult append(EditToken token, String edit, String who, Instant at, List<Draft> drafts) {
        return inTransaction(handle -> {
            database.beginStoring(handle);
            List<Long> before = revisionsOf(handle, token);
            if (!before.isEmpty()) {
                return new AppendResult.Appended(before);
            }
            List<Clash> clashes = clashes(handle, drafts);
            if (!clashes.isEmpty()) {
                return new AppendResult.Conflicting(clashes);
            }
            long editNumber = last(handle, "edit") + 1;
            handle.createUpdate("insert into edit (edit, name, made_at, made_by, token)"
                            + " values (:edit, :name, :at, :who, :token)")
                    .bind("edit", editNumber)
                    .bind("name", edit)
                    .bind("at", at.toString())
                    .bind("who", who)
                    .bind("token", token.value())
                    .execute();
            long first = last(handle, "revision") + 1;
            rows.insert(handle, first, editNumber, drafts);
            return new AppendResult.Appended(
                    LongStream.range(first, first + drafts.size()).boxed().toList());
        });
    }

    /** The revisions of an edit in the order of its drafts; none when it is not stored. */
    private static List<Long> revisionsOf(Handle handle, EditToken token) {
        return handle.createQuery("select revision.revision from revision join edit on edit.edit = revision.edit"
                        + " where edit.token = :token order by revision.revision")
                .bind("token", token.value())
                .mapTo(Long.class)
                .list();
    }

    private List<Clash> clashes(Handle handle, List<Draft> drafts) {
        List<Clash> clashes = new ArrayList<>();
        for (int begin = 0; begin < drafts.size(); begin += ASKED_AT_ONCE) {
            List<Draft> some = drafts.subList(begin, Math.min(begin + ASKED_AT_ONCE, drafts.size()));
            Map<String, Long> heads = new HashMap<>();
            handle.createQuery("select thing, revision from head where thing in (<things>)")
                    .bindList(
                            "things",
                            some.stream().map(draft -> draft.id().value()).toList())
                    .map((row, context) -> Map.entry(row.getString("thing"), row.getLong("revision")))
                    .forEach(head -> heads.put(head.getKey(), head.getValue()));
            for (Draft draft : some) {
                long head = heads.getOrDefault(draft.id().value(), draft.basedOn());
                if (head != draft.basedOn()) {
                    clashes.add(new Clash(draft, stored(handle, head)));
                }
            }
        }
        return clashes;
    }

    private Revision stored(Handle handle, long revision) {
        return handle.createQuery(Rows.SELECT + " where revision.revision = :revision")
                .bind("revision", revision)
                .map(rows)
                .one();
    }

    /** A thing's past, oldest first. */
    public List<Revision> pastOf(ThingId id) {
        return asked(
                handle -> handle.createQuery(Rows.SELECT + " where revision.thing = :thing order by revision.revision")
                        .bind("thing", id.value())
                        .map(rows)
                        .list());
    }

    /** All revisions after one, oldest first. */
    public List<Revision> since(long revision) {
        return inTransaction(handle -> handle.createQuery(
                        Rows.SELECT + " where revision.revision > :revision order by revision.revision")
                .bind("revision", revision)
                .map(rows)
                .list());
    }

    /** Present things that are looked for, by name. */
    public List<ThingId> find(Search search) {
        return asked(handle -> Searches.find(handle, search));
    }

    /** Checks every row, the past included; what {@link LibraryCheck} does for a file goes on from here. */
    public CheckReport check() {
        return asked(handle -> new RowCheck(handle, forms, new CheckFindings()).run());
    }

    /** A setting of the database, for tests. */
    String pragma(String name) {
        return inTransaction(handle ->
                handle.createQuery("pragma " + name).mapTo(String.class).one());
    }

    /** The last revision; 0 where nothing was ever stored. */
    public long lastRevision() {
        return inTransaction(handle -> last(handle, "revision"));
    }

    private long count(String table) {
        return inTransaction(handle -> handle.createQuery("select count(*) from " + table)
                .mapTo(Long.class)
                .one());
    }

    private static long last(Handle handle, String table) {
        return handle.createQuery("select coalesce(max(" + table + "), 0) from " + table)
                .mapTo(Long.class)
                .one();
    }

    /** A question, asked once more over a new link where the old one turns out to be broken. */
    private synchronized <T> T asked(Function<Handle, T> question) {
        boolean linked = link.isPresent();
        try {
            return inTransaction(question);
        } catch (StoreFailure failure) {
            if (linked && link.isEmpty() && !closed) {
                LOG.log(Level.FINE, "asked once more over a new link", failure);
                return inTransaction(question);
            }
            throw failure;
        }
    }

    private synchronized <T> T inTransaction(Function<Handle, T> work) {
        try {
            return Jdbi.create(connection()).inTransaction(work::apply);
        } catch (JdbiException | SQLException failure) {
            if (database.lost(failure)) {
                drop();
            }
            throw new StoreFailure("the library " + database.what(failure), failure);
        }
    }

    private Connection connection() throws SQLException {
        if (closed) {
            throw new SQLException("it is closed");
        }
        if (link.isEmpty()) {
            link = Optional.of(database.connect());
        }
        return link.get();
    }

    /** Lets go of a connection that is of no more use. */
    private void drop() {
        Optional<Connection> broken = link;
        link = Optional.empty();
        try {
            if (broken.isPresent()) {
                broken.get().close();
            }
        } catch (SQLException failure) {
            LOG.log(Level.FINE, "a broken connection could not be closed", failure);
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
        try {
            if (link.isPresent()) {
                link.get().close();
            }
        } catch (SQLException failure) {
            throw new StoreFailure("the library " + database.what(failure), failure);
        }
    }
}
