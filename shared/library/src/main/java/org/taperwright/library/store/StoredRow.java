package org.taperwright.library.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;

/** A revision as its row stands, the form not yet read. */
record StoredRow(
        long revision, String thing, String kind, Optional<String> form, String edit, String madeAt, String madeBy) {
    static StoredRow of(ResultSet row) throws SQLException {
        return new StoredRow(
                row.getLong("revision"),
                row.getString("thing"),
                row.getString("kind"),
                Optional.ofNullable(row.getString("form")),
                row.getString("edit_name"),
                row.getString("made_at"),
                row.getString("made_by"));
    }

    Revision read(ThingForms forms) {
        return read(forms, Instant.parse(madeAt));
    }

    /** As {@link #read(ThingForms)}, with the time when it was made, which the rows of one edit have in common. */
    Revision read(ThingForms forms, Instant at) {
        ThingKind known = ThingKind.named(kind)
                .orElseThrow(() -> new StoreFailure("the library holds a thing of an unknown kind: " + kind));
        Content content = form.map(text -> forms.read(known, text)).orElseGet(Content.TakenOut::new);
        return new Revision(revision, new ThingId(thing), known, content, edit, at, madeBy);
    }
}
