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
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

/** The form of a sequence. */
final class SequenceForm {
    private static final int MOST_STEPS = 500;
    private static final String IN_ORDER = "the steps in order";

    private static final Field<Sequence, String> NAME = required("name", name(), "what people call it", Sequence::name);
    private static final Field<Sequence, Optional<ThingId>> CANAL =
            optional("canal", thing(), "identifier of the canal it is tried in", Sequence::canal);
    private static final Field<Sequence, Optional<ThingId>> MOTOR =
            optional("motor", thing(), "identifier of the motor that drives its powered steps", Sequence::motor);
    private static final Field<Sequence, List<Step>> STEPS =
            required("steps", list(StepForms.FORM, 0, MOST_STEPS), IN_ORDER, Sequence::steps);
    private static final Field<Sequence, String> NOTE = standing("note", "", note(), "free text", Sequence::note);

    static final RecordForm<Sequence> FORM = new RecordForm<>(
            "sequence",
            "Ordered steps for a kind of canal.",
            false,
            List.of(NAME, CANAL, MOTOR, STEPS, NOTE),
            values -> new Sequence(
                    values.of(NAME), values.of(CANAL), values.of(MOTOR), values.of(STEPS), values.of(NOTE)));

    /** Only ever read: every step was an instrument's. */
    private static final Field<Sequence, List<InstrumentStep>> STEPS_1 = required(
            "steps",
            list(StepForms.VERSION_1, 0, MOST_STEPS),
            IN_ORDER,
            sequence -> sequence.steps().stream()
                    .filter(InstrumentStep.class::isInstance)
                    .map(InstrumentStep.class::cast)
                    .toList());

    static final RecordForm<Sequence> VERSION_1 = new RecordForm<>(
            "sequence",
            "Ordered steps for a kind of canal.",
            false,
            List.of(NAME, CANAL, MOTOR, STEPS_1, NOTE),
            values -> new Sequence(
                    values.of(NAME),
                    values.of(CANAL),
                    values.of(MOTOR),
                    List.copyOf(values.of(STEPS_1)),
                    values.of(NOTE)));

    private SequenceForm() {}
}
