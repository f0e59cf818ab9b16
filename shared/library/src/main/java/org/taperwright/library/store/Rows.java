package org.taperwright.library.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.StatementContext;
import org.taperwright.mechanics.design.ThingId;

/** Revisions as rows. */
final class Rows implements RowMapper<Revision> {
    static final String SELECT = "select revision.*, edit.name as edit_name, edit.made_at, edit.made_by"
            + " from revision join edit on edit.edit = revision.edit";

    /** Every revision in order, even one whose edit is missing. */
    static final String SELECT_ALL = "select revision.*, edit.name as edit_name, edit.made_at, edit.made_by"
            + " from revision left join edit on edit.edit = revision.edit order by revision.revision";

    private static final String INSERT = "insert into revision"
            + " (revision, edit, thing, kind, form, name, search_text, size, taper, family, alloy, motion) values"
            + " (:revision, :edit, :thing, :kind, :form, :name, :text, :size, :taper, :family, :alloy, :motion)";
    private static final String UPSERT_HEAD = "insert into head (thing, revision) values (:thing, :revision)"
            + " on conflict (thing) do update set revision = excluded.revision";

    private final ThingForms forms;

    Rows(ThingForms forms) {
        this.forms = forms;
    }

    @Override
    public Revision map(ResultSet row, StatementContext context) throws SQLException {
        ThingKind kind = kind(row.getString("kind"));
        String form = row.getString("form");
        return new Revision(
                row.getLong("revision"),
                new ThingId(row.getString("thing")),
                kind,
                form == null ? new Content.TakenOut() : forms.read(kind, form),
                row.getString("edit_name"),
                Instant.parse(row.getString("made_at")),
                row.getString("made_by"));
    }

    private static ThingKind kind(String word) {
        return ThingKind.named(word)
                .orElseThrow(() -> new StoreFailure("the library holds a thing of an unknown kind: " + word));
    }

    void insert(Handle handle, long revision, long edit, Draft draft) {
        SearchColumns columns = draft.thing().map(SearchColumns::of).orElseGet(() -> SearchColumns.of(""));
        handle.createUpdate(INSERT)
                .bind("revision", revision)
                .bind("edit", edit)
                .bind("thing", draft.id().value())
                .bind("kind", draft.kind().word())
                .bind("form", draft.thing().map(thing -> forms.write(draft.id(), thing)))
                .bind("name", draft.thing().map(Names::of).orElse(""))
                .bind("text", columns.text())
                .bind("size", columns.size())
                .bind("taper", columns.taper())
                .bind("family", columns.family())
                .bind("alloy", columns.alloy())
                .bind("motion", columns.motion())
                .execute();
        handle.createUpdate(UPSERT_HEAD)
                .bind("thing", draft.id().value())
                .bind("revision", revision)
                .execute();
    }
}
