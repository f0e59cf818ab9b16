package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.name;
import static org.taperwright.library.exchange.form.Forms.note;
import static org.taperwright.library.exchange.form.Forms.number;
import static org.taperwright.library.exchange.form.Forms.thing;
import static org.taperwright.library.exchange.form.Forms.whole;
import static org.taperwright.library.exchange.form.Forms.word;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

/** The form of a sequence. */
final class SequenceForm {
    private static final Field<Step, ThingId> INSTRUMENT =
            required("instrument", thing(), "identifier of the instrument used", Step::instrument);
    private static final Field<Step, Double> DEPTH = required(
            "depthMm",
            number(0, 200, "mm"),
            "how far the tip goes, from the coronal reference point, mm",
            Step::depthMm);
    private static final Field<Step, Motion> MOTION =
            required("motion", word(Motion.values(), Motion::word), "how it is moved", Step::motion);
    private static final Field<Step, Optional<Double>> SPEED =
            optional("speedRpm", WindowForms.RPM, "speed set on the motor, rev/min; left out by hand", Step::speedRpm);
    private static final Field<Step, Optional<Double>> TORQUE = optional(
            "torqueNmm", WindowForms.TORQUE, "torque limit set on the motor, N mm; left out by hand", Step::torqueNmm);
    private static final Field<Step, Integer> STROKES =
            required("strokes", whole(0, 1_000_000), "number of strokes", Step::strokes);
    private static final Field<Step, String> STEP_NOTE = standing("note", "", note(), "free text", Step::note);
    private static final RecordForm<Step> STEP = new RecordForm<>(
            "step",
            "One step of a sequence.",
            false,
            List.of(INSTRUMENT, DEPTH, MOTION, SPEED, TORQUE, STROKES, STEP_NOTE),
            values -> new Step(
                    values.of(INSTRUMENT),
                    values.of(DEPTH),
                    values.of(MOTION),
                    values.of(SPEED),
                    values.of(TORQUE),
                    values.of(STROKES),
                    values.of(STEP_NOTE)));

    private static final Field<Sequence, String> NAME = required("name", name(), "what people call it", Sequence::name);
    private static final Field<Sequence, Optional<ThingId>> CANAL =
            optional("canal", thing(), "identifier of the canal it is tried in", Sequence::canal);
    private static final Field<Sequence, Optional<ThingId>> MOTOR =
            optional("motor", thing(), "identifier of the motor that drives its powered steps", Sequence::motor);
    private static final Field<Sequence, List<Step>> STEPS =
            required("steps", list(STEP, 0, 500), "the steps in order", Sequence::steps);
    private static final Field<Sequence, String> NOTE = standing("note", "", note(), "free text", Sequence::note);

    static final RecordForm<Sequence> FORM = new RecordForm<>(
            "sequence",
            "Ordered steps for a kind of canal.",
            false,
            List.of(NAME, CANAL, MOTOR, STEPS, NOTE),
            values -> new Sequence(
                    values.of(NAME), values.of(CANAL), values.of(MOTOR), values.of(STEPS), values.of(NOTE)));

    private SequenceForm() {}
}
