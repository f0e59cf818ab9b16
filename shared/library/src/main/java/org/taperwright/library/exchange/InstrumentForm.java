package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.flag;
import static org.taperwright.library.exchange.form.Forms.line;
import static org.taperwright.library.exchange.form.Forms.name;
import static org.taperwright.library.exchange.form.Forms.note;
import static org.taperwright.library.exchange.form.Forms.picture;
import static org.taperwright.library.exchange.form.Forms.thing;
import static org.taperwright.library.exchange.form.Forms.whole;
import static org.taperwright.library.exchange.form.Forms.word;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.FieldValues;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Picture;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Supply;
import org.taperwright.shaping.instrument.Window;

/** The form of a catalogue entry. */
final class InstrumentForm {
    private static final Field<Instrument, String> NAME =
            required("name", name(), "designation for people", Instrument::name);
    private static final Field<Instrument, String> MAKER =
            standing("maker", "", line(), "who makes it", Instrument::maker);
    private static final Field<Instrument, String> LINE =
            standing("line", "", line(), "the maker's line", Instrument::line);
    private static final Field<Instrument, String> TYPE =
            standing("type", "", line(), "the trade's type, such as K-type file", Instrument::type);
    private static final Field<Instrument, Drive> DRIVE =
            required("drive", word(Drive.values(), Drive::word), "how it is held", Instrument::drive);
    private static final Field<Instrument, Design> DESIGN =
            required("design", DesignForm.FORM, "its geometry and material, a copy of its own", Instrument::design);
    private static final Field<Instrument, Optional<ThingId>> DESIGN_ID =
            optional("designId", thing(), "identifier of the library's design it was taken from", Instrument::designId);
    private static final Field<Instrument, Boolean> ASSUMED = standing(
            "designAssumed",
            false,
            flag(),
            "whether the design was assumed by type rather than known",
            Instrument::designAssumed);
    private static final Field<Instrument, Optional<Window>> SPEED =
            optional("speedRpm", WindowForms.SPEED, "speeds the maker allows, rev/min", Instrument::speedRpm);
    private static final Field<Instrument, Optional<Window>> TORQUE =
            optional("torqueNmm", WindowForms.TORQUES, "torque limits the maker allows, N mm", Instrument::torqueNmm);
    private static final Field<Instrument, Optional<Reciprocation>> RECIPROCATION = optional(
            "reciprocation",
            WindowForms.RECIPROCATION,
            "the angles the maker allows; left out when it does not reciprocate",
            Instrument::reciprocation);
    private static final Field<Instrument, Integer> USES = standing(
            "usesAllowed",
            0,
            whole(0, 1_000_000),
            "how many uses the maker allows; 0 when not stated",
            Instrument::usesAllowed);
    private static final Field<Instrument, String> NOTE = standing("note", "", note(), "free text", Instrument::note);

    private static final Field<Instrument, Supply> SUPPLY = standing(
            "supply",
            Supply.NONE,
            SupplyForm.FORM,
            "where it comes from and how many are in stock",
            Instrument::supply);
    private static final Field<Instrument, Optional<Picture>> PICTURE =
            optional("picture", picture(), "a small PNG or JPEG file in Base64", Instrument::picture);

    /** As version 1 had it: without angles, supply and picture. */
    static final RecordForm<Instrument> VERSION_1 = form(
            List.of(NAME, MAKER, LINE, TYPE, DRIVE, DESIGN_ID, ASSUMED, SPEED, TORQUE, USES, NOTE, DESIGN),
            values -> new Instrument(
                    values.of(NAME),
                    values.of(MAKER),
                    values.of(LINE),
                    values.of(TYPE),
                    values.of(DRIVE),
                    values.of(DESIGN),
                    values.of(DESIGN_ID),
                    values.of(ASSUMED),
                    values.of(SPEED),
                    values.of(TORQUE),
                    values.of(USES),
                    values.of(NOTE)));

    static final RecordForm<Instrument> FORM = form(
            List.of(
                    NAME,
                    MAKER,
                    LINE,
                    TYPE,
                    DRIVE,
                    DESIGN_ID,
                    ASSUMED,
                    SPEED,
                    TORQUE,
                    RECIPROCATION,
                    USES,
                    SUPPLY,
                    NOTE,
                    DESIGN,
                    PICTURE),
            values -> new Instrument(
                    values.of(NAME),
                    values.of(MAKER),
                    values.of(LINE),
                    values.of(TYPE),
                    values.of(DRIVE),
                    values.of(DESIGN),
                    values.of(DESIGN_ID),
                    values.of(ASSUMED),
                    values.of(SPEED),
                    values.of(TORQUE),
                    values.of(RECIPROCATION),
                    values.of(USES),
                    values.of(SUPPLY),
                    values.of(PICTURE),
                    values.of(NOTE)));

    private static RecordForm<Instrument> form(
            List<Field<Instrument, ?>> fields, Function<FieldValues, Instrument> made) {
        return new RecordForm<>("instrument", "A catalogue entry.", false, fields, made);
    }

    private InstrumentForm() {}
}
