package org.taperwright.library.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.StatementContext;

/** Revisions as rows. */
final class Rows implements RowMapper<Revision> {
    static final String SELECT = "select revision.*, edit.name as edit_name, edit.made_at, edit.made_by"
            + " from revision join edit on edit.edit = revision.edit";

    /** The revision at which each thing stands. */
    static final String SELECT_HEADS = "select revision.revision, revision.thing, revision.kind, revision.form,"
            + " edit.name as edit_name, edit.made_at, edit.made_by"
            + " from head join revision on revision.revision = head.revision join edit on edit.edit = revision.edit";

    /** Every revision in order, even one whose edit is missing. */
    static final String SELECT_ALL = "select revision.*, edit.name as edit_name, edit.made_at, edit.made_by"
            + " from revision left join edit on edit.edit = revision.edit order by revision.revision";

    private static final String INSERT = "insert into revision"
            + " (revision, edit, thing, kind, form, name, search_text, size, taper, family, alloy, motion) values"
            + " (:revision, :edit, :thing, :kind, :form, :name, :text, :size, :taper, :family, :alloy, :motion)";
    private static final String UPSERT_HEAD = "insert into head (thing, revision) values (:thing, :revision)"
            + " on conflict (thing) do update set revision = excluded.revision";

    private static final int BATCH = 500;

    private final ThingForms forms;

    Rows(ThingForms forms) {
        this.forms = forms;
    }

    @Override
    public Revision map(ResultSet row, StatementContext context) throws SQLException {
        return StoredRow.of(row).read(forms);
    }

    /** Adds the revisions of an edit and lets their things stand there; the first gets a number, the others follow. */
    void insert(Handle handle, long first, long edit, List<Draft> drafts) {
        for (int begin = 0; begin < drafts.size(); begin += BATCH) {
            insertBatch(handle, first + begin, edit, drafts.subList(begin, Math.min(begin + BATCH, drafts.size())));
        }
    }

    private void insertBatch(Handle handle, long first, long edit, List<Draft> drafts) {
        PreparedBatch revisions = handle.prepareBatch(INSERT);
        PreparedBatch heads = handle.prepareBatch(UPSERT_HEAD);
        long revision = first;
        for (Draft draft : drafts) {
            SearchColumns columns = draft.thing().map(SearchColumns::of).orElseGet(() -> SearchColumns.of(""));
            revisions
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
                    .add();
            heads.bind("thing", draft.id().value()).bind("revision", revision).add();
            revision++;
        }
        revisions.execute();
        heads.execute();
    }
}
