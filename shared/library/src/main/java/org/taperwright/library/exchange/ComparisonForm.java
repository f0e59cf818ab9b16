package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.name;
import static org.taperwright.library.exchange.form.Forms.note;
import static org.taperwright.library.exchange.form.Forms.thing;

import java.util.List;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.design.ThingId;

/** The form of a comparison. */
final class ComparisonForm {
    private static final int MOST_DESIGNS = 6;

    private static final Field<SavedComparison, String> NAME =
            required("name", name(), "what people call it", SavedComparison::name);
    private static final Field<SavedComparison, List<ThingId>> DESIGNS = required(
            "designs", list(thing(), 0, MOST_DESIGNS), "identifiers of the designs compared", SavedComparison::designs);
    private static final Field<SavedComparison, ThingId> DATUM =
            required("datum", thing(), "identifier of the design the others are held against", SavedComparison::datum);
    private static final Field<SavedComparison, String> NOTE =
            standing("note", "", note(), "free text", SavedComparison::note);

    static final RecordForm<SavedComparison> FORM = new RecordForm<>(
            "comparison",
            "Designs held against a datum.",
            false,
            List.of(NAME, DESIGNS, DATUM, NOTE),
            values -> new SavedComparison(values.of(NAME), values.of(DESIGNS), values.of(DATUM), values.of(NOTE)));

    private ComparisonForm() {}
}
