package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.name;
import static org.taperwright.library.exchange.form.Forms.note;
import static org.taperwright.library.exchange.form.Forms.thing;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.Piece;

/** The form of a kit. */
final class KitForm {
    private static final int MOST_PIECES = 5000;

    private static final Field<Kit, String> NAME = required("name", name(), "what people call it", Kit::name);
    private static final Field<Kit, String> PURPOSE = standing("purpose", "", note(), "what it is for", Kit::purpose);
    private static final Field<Kit, Optional<ThingId>> MOTOR =
            optional("motor", thing(), "identifier of the owner's motor", Kit::motor);
    private static final Field<Kit, List<Piece>> PIECES =
            required("pieces", list(PieceForm.FORM, 0, MOST_PIECES), "its pieces", Kit::pieces);
    private static final Field<Kit, String> NOTE =
            standing("note", "", note(), "free text, with nothing about a patient", Kit::note);

    static final RecordForm<Kit> FORM = new RecordForm<>(
            "kit",
            "The instruments a person owns for a purpose.",
            false,
            List.of(NAME, PURPOSE, MOTOR, PIECES, NOTE),
            values ->
                    new Kit(values.of(NAME), values.of(PURPOSE), values.of(MOTOR), values.of(PIECES), values.of(NOTE)));

    private KitForm() {}
}
