package org.taperwright.library.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.taperwright.mechanics.design.ThingId;

/** Checks every row of a library, the past included, in one pass. */
final class RowCheck {
    private static final String RESTORE = "Restore a backup of the library; the damaged file is set aside and kept.";
    private static final String REWRITE =
            "Open the thing's past, bring an older revision back, or enter the thing anew.";

    private final Handle handle;
    private final ThingForms forms;
    private final CheckFindings findings;
    private final Map<String, Long> lastRevisions = new HashMap<>();
    private final Map<ThingId, ThingKind> present = new HashMap<>();
    private final List<Pointer> pointers = new ArrayList<>();
    private long before;

    /** A reference of a thing that is present. */
    private record Pointer(String from, Reference reference) {}

    RowCheck(Handle handle, ThingForms forms, CheckFindings findings) {
        this.handle = handle;
        this.forms = forms;
        this.findings = findings;
    }

    CheckReport run() {
        Map<String, Long> heads = heads();
        handle.createQuery(Rows.SELECT_ALL)
                .setFetchSize(LibraryStore.FETCHED_AT_ONCE)
                .map((row, context) -> {
                    check(row, heads);
                    return row.getLong("revision");
                })
                .forEach(revision -> before = revision);
        checkHeads(heads);
        pointers.forEach(this::check);
        findings.countThings(present.size());
        return findings.report();
    }

    private Map<String, Long> heads() {
        Map<String, Long> heads = new HashMap<>();
        handle.createQuery("select thing, revision from head")
                .map((row, context) -> Map.entry(row.getString("thing"), row.getLong("revision")))
                .forEach(head -> heads.put(head.getKey(), head.getValue()));
        return heads;
    }

    private void check(ResultSet row, Map<String, Long> heads) throws SQLException {
        findings.countRevision();
        long revision = row.getLong("revision");
        String thing = row.getString("thing");
        String where = "revision " + revision + " of " + thing;
        lastRevisions.put(thing, revision);
        if (revision != before + 1) {
            findings.grave(where, "follows revision " + before, "expected no revision to be missing", RESTORE);
        }
        checkEdit(row, where);
        Optional<ThingKind> kind = ThingKind.named(row.getString("kind"));
        if (kind.isEmpty()) {
            findings.grave(where, "is of an unknown kind, " + row.getString("kind"), "expected a known kind", RESTORE);
        } else if (row.getString("form") != null) {
            checkForm(row, where, kind.get(), Objects.equals(heads.get(thing), revision));
        }
    }

    private void checkEdit(ResultSet row, String where) throws SQLException {
        if (row.getString("edit_name") == null) {
            findings.grave(where, "belongs to no edit", "expected the edit that made it", RESTORE);
            return;
        }
        try {
            Instant.parse(row.getString("made_at"));
        } catch (DateTimeException noTime) {
            findings.grave(where, "has no time but \"" + row.getString("made_at") + '"', "expected a time", RESTORE);
        }
    }

    private void checkForm(ResultSet row, String where, ThingKind kind, boolean now) throws SQLException {
        ThingId id = new ThingId(row.getString("thing"));
        if (now) {
            present.put(id, kind);
        }
        Content content = forms.read(kind, row.getString("form"));
        if (content instanceof Content.Unreadable unreadable) {
            String what = "cannot be read: " + unreadable.faults().get(0).sentence();
            if (now) {
                findings.grave(where, what, "expected " + kind.one(), REWRITE);
            } else {
                findings.odd(where, what, "expected " + kind.one(), "Nothing needs it: it is of the past.");
            }
        } else if (content instanceof Content.Present found) {
            checkColumns(row, where, found.thing());
            if (now) {
                Reference.of(found.thing())
                        .forEach(reference -> pointers.add(new Pointer(kind.word() + ' ' + id, reference)));
            }
        }
    }

    private void checkColumns(ResultSet row, String where, Record thing) throws SQLException {
        SearchColumns columns = SearchColumns.of(thing);
        boolean agree = Names.of(thing).equals(row.getString("name"))
                && spaced(columns.text()).equals(spaced(row.getString("search_text")))
                && columns.size()
                        .equals(Optional.ofNullable(row.getObject("size")).map(RowCheck::whole))
                && columns.taper()
                        .equals(Optional.ofNullable(row.getObject("taper")).map(RowCheck::number))
                && columns.family().equals(Optional.ofNullable(row.getString("family")))
                && columns.alloy().equals(Optional.ofNullable(row.getString("alloy")))
                && columns.motion().equals(Optional.ofNullable(row.getString("motion")));
        if (!agree) {
            findings.grave(
                    where,
                    "is searched by other words or numbers than it holds",
                    "expected the columns to repeat the form",
                    "Change the thing and change it back: each edit writes the columns anew.");
        }
    }

    /** Words with one space between them: where a thing has no word for a field, older programs left more. */
    private static String spaced(String words) {
        return words.strip().replaceAll("\\s+", " ");
    }

    private static int whole(Object value) {
        return ((Number) value).intValue();
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    private void checkHeads(Map<String, Long> heads) {
        lastRevisions.forEach((thing, last) -> {
            Long head = heads.get(thing);
            if (!last.equals(head)) {
                findings.grave(
                        thing,
                        head == null ? "stands nowhere" : "stands at revision " + head,
                        "expected its last revision, " + last,
                        RESTORE);
            }
        });
        heads.keySet().stream()
                .filter(thing -> !lastRevisions.containsKey(thing))
                .forEach(thing -> findings.grave(thing, "has no revision", "expected at least one", RESTORE));
    }

    private void check(Pointer pointer) {
        Reference reference = pointer.reference();
        ThingKind kind = present.get(reference.to());
        String where = pointer.from() + ", " + reference.where();
        String what = "refers to \"" + reference.to() + "\", which is ";
        String mend = "Open the thing and choose another " + reference.kind().word() + " there.";
        if (kind == null) {
            findings.odd(
                    where,
                    what + "not in the library",
                    "expected " + reference.kind().one(),
                    mend);
        } else if (kind != reference.kind()) {
            findings.grave(
                    where, what + kind.one(), "expected " + reference.kind().one(), mend);
        }
    }
}
