package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.flag;
import static org.taperwright.library.exchange.form.Forms.identifier;
import static org.taperwright.library.exchange.form.Forms.line;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.name;
import static org.taperwright.library.exchange.form.Forms.note;
import static org.taperwright.library.exchange.form.Forms.number;
import static org.taperwright.library.exchange.form.Forms.thing;
import static org.taperwright.library.exchange.form.Forms.word;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.SavedFilter;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Window;

/** The form of a saved filter. */
final class FilterForm {
    private static final int MOST_CHOICES = 50;

    private static final Field<SavedFilter, String> NAME =
            required("name", name(), "what people call it", SavedFilter::name);
    private static final Field<SavedFilter, String> WORDS = standing(
            "words",
            "",
            line(),
            "words that must all stand in the instrument's text",
            saved -> saved.filter().words());
    private static final Field<SavedFilter, Optional<Window>> SIZE = optional(
            "size",
            WindowForms.range("sizeRange", "A range of sizes, hundredths of a millimetre.", number(0, 2000, "")),
            "sizes by ISO 3630-1",
            saved -> saved.filter().size());
    private static final Field<SavedFilter, Optional<Window>> TAPER = optional(
            "taper",
            WindowForms.range("taperRange", "A range of tapers, mm per mm.", number(-10, 10, "mm per mm")),
            "tapers at the tip, mm per mm",
            saved -> saved.filter().taper());
    private static final Field<SavedFilter, Optional<Window>> LENGTH = optional(
            "lengthMm",
            WindowForms.range("lengthRange", "A range of lengths, mm.", number(0, 200, "mm")),
            "lengths from the tip to the handle, mm",
            saved -> saved.filter().lengthMm());
    private static final Field<SavedFilter, List<String>> FAMILIES = standing(
            "families",
            List.of(),
            list(identifier(), 0, MOST_CHOICES),
            "identifiers of section families, of which any will do",
            saved -> saved.filter().families());
    private static final Field<SavedFilter, List<String>> ALLOYS = standing(
            "alloys",
            List.of(),
            list(identifier(), 0, MOST_CHOICES),
            "identifiers of alloys, of which any will do",
            saved -> saved.filter().alloys());
    private static final Field<SavedFilter, List<Motion>> MOTIONS = standing(
            "motions",
            List.of(),
            list(word(Motion.values(), Motion::word), 0, Motion.values().length),
            "motions, of which any will do",
            saved -> saved.filter().motions());
    private static final Field<SavedFilter, Boolean> IN_STOCK = standing(
            "inStock",
            false,
            flag(),
            "whether only those in stock",
            saved -> saved.filter().inStock());
    private static final Field<SavedFilter, Optional<ThingId>> MOTOR = optional(
            "motor",
            thing(),
            "identifier of the motor that must be able to drive it",
            saved -> saved.filter().motor());
    private static final Field<SavedFilter, String> NOTE = standing("note", "", note(), "free text", SavedFilter::note);

    static final RecordForm<SavedFilter> FORM = new RecordForm<>(
            "filter",
            "Which instruments of a catalogue are looked for; what is left out does not matter.",
            false,
            List.of(NAME, WORDS, SIZE, TAPER, LENGTH, FAMILIES, ALLOYS, MOTIONS, IN_STOCK, MOTOR, NOTE),
            values -> new SavedFilter(
                    values.of(NAME),
                    new InstrumentFilter(
                            values.of(WORDS),
                            values.of(SIZE),
                            values.of(TAPER),
                            values.of(LENGTH),
                            values.of(FAMILIES),
                            values.of(ALLOYS),
                            values.of(MOTIONS),
                            values.of(IN_STOCK),
                            values.of(MOTOR)),
                    values.of(NOTE)));

    private FilterForm() {}
}
