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
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;

/**
 * A library on disk. Revisions are only ever added, several in one transaction; an edit that returned is safe. May be
 * called from any thread, one call at a time going through. Every method may throw {@link StoreFailure}.
 */
public final class LibraryStore implements AutoCloseable {
    private final Connection connection;
    private final Jdbi jdbi;
    private final ThingForms forms;
    private final Rows rows;

    LibraryStore(Connection connection, ThingForms forms) {
        this.connection = connection;
        this.jdbi = Jdbi.create(connection);
        this.forms = forms;
        this.rows = new Rows(forms);
    }

    /**
     * Opens a library's file, makes a new one where there is none, and brings an older one up to date. A file that is no
     * library, is damaged or was written by a newer program is left as it was.
     */
    public static OpenResult open(Path file, ThingForms forms) {
        return new SqliteFile(file).open(forms);
    }

    /** Why a thing could not be kept; empty when it can. */
    public List<Fault> faults(ThingId id, Record thing) {
        return forms.faults(id, thing);
    }

    /** Everything as it stands. */
    public Contents contents() {
        return inTransaction(handle -> {
            Map<ThingId, Long> heads = new HashMap<>();
            handle.createQuery("select thing, revision from head")
                    .map((row, context) -> Map.entry(new ThingId(row.getString("thing")), row.getLong("revision")))
                    .forEach(head -> heads.put(head.getKey(), head.getValue()));
            FormReading reading = new FormReading(forms);
            handle.createQuery("select * from present_thing")
                    .map((row, context) -> StoredRow.of(row))
                    .forEach(reading::add);
            Map<ThingId, Entry> entries = new HashMap<>();
            List<Revision> unreadable = new ArrayList<>();
            reading.finish(revision -> {
                if (revision.content() instanceof Content.Present present) {
                    ThingId id = revision.id();
                    entries.put(
                            id, new Entry(id, present.thing(), revision.revision(), revision.at(), revision.edit()));
                } else {
                    unreadable.add(revision);
                }
            });
            return new Contents(new Snapshot(last(handle, "revision"), entries), heads, unreadable);
        });
    }

    /**
     * Stores an edit, all of it or nothing.
     *
     * @param edit its name
     * @param who who made it
     * @param at when
     * @param drafts its changes, each thing once
     */
    public AppendResult append(String edit, String who, Instant at, List<Draft> drafts) {
        return inTransaction(handle -> {
            List<Clash> clashes = drafts.stream()
                    .flatMap(draft -> clash(handle, draft).stream())
                    .toList();
            if (!clashes.isEmpty()) {
                return new AppendResult.Conflicting(clashes);
            }
            long editNumber = last(handle, "edit") + 1;
            handle.createUpdate("insert into edit (edit, name, made_at, made_by) values (:edit, :name, :at, :who)")
                    .bind("edit", editNumber)
                    .bind("name", edit)
                    .bind("at", at.toString())
                    .bind("who", who)
                    .execute();
            List<Long> revisions = new ArrayList<>();
            long revision = last(handle, "revision");
            for (Draft draft : drafts) {
                revision++;
                rows.insert(handle, revision, editNumber, draft);
                revisions.add(revision);
            }
            return new AppendResult.Appended(revisions);
        });
    }

    private Optional<Clash> clash(Handle handle, Draft draft) {
        return handle.createQuery(
                        Rows.SELECT + " join head on head.revision = revision.revision where head.thing = :thing")
                .bind("thing", draft.id().value())
                .map(rows)
                .findOne()
                .filter(stored -> stored.revision() != draft.basedOn())
                .map(stored -> new Clash(draft, stored));
    }

    /** A thing's past, oldest first. */
    public List<Revision> pastOf(ThingId id) {
        return inTransaction(
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
        return inTransaction(handle -> Searches.find(handle, search));
    }

    /** A setting of the database, for tests. */
    String pragma(String name) {
        return inTransaction(handle ->
                handle.createQuery("pragma " + name).mapTo(String.class).one());
    }

    private static long last(Handle handle, String table) {
        return handle.createQuery("select coalesce(max(" + table + "), 0) from " + table)
                .mapTo(Long.class)
                .one();
    }

    private synchronized <T> T inTransaction(Function<Handle, T> work) {
        try {
            return jdbi.inTransaction(work::apply);
        } catch (JdbiException failure) {
            throw new StoreFailure("the library " + SqliteFaults.what(failure), failure);
        }
    }

    @Override
    public synchronized void close() {
        try {
            connection.close();
        } catch (SQLException failure) {
            throw new StoreFailure("the library " + SqliteFaults.what(failure), failure);
        }
    }
}
