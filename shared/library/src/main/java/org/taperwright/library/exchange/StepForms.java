package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.name;
import static org.taperwright.library.exchange.form.Forms.note;
import static org.taperwright.library.exchange.form.Forms.number;
import static org.taperwright.library.exchange.form.Forms.thing;
import static org.taperwright.library.exchange.form.Forms.whole;
import static org.taperwright.library.exchange.form.Forms.word;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.Form;
import org.taperwright.library.exchange.form.KindForm;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.shaping.sequence.SetAngles;
import org.taperwright.shaping.sequence.Step;

/** The forms of a sequence's steps. */
final class StepForms {
    private static final String USED = "identifier of the instrument used";
    private static final Form<Double> DEPTH_FORM = number(0, 200, "mm");
    private static final Form<Integer> STROKES_FORM = whole(0, 1_000_000);

    private static final Field<InstrumentStep, ThingId> INSTRUMENT =
            required("instrument", thing(), USED, InstrumentStep::instrument);
    private static final Field<InstrumentStep, Double> DEPTH = required(
            "depthMm",
            DEPTH_FORM,
            "how far the tip goes, from the coronal reference point, mm",
            InstrumentStep::depthMm);
    private static final Field<InstrumentStep, Motion> MOTION =
            required("motion", word(Motion.values(), Motion::word), "how it is moved", InstrumentStep::motion);
    private static final Field<InstrumentStep, Optional<Double>> SPEED = optional(
            "speedRpm", WindowForms.RPM, "speed set on the motor, rev/min; left out by hand", InstrumentStep::speedRpm);
    private static final Field<InstrumentStep, Optional<Double>> TORQUE = optional(
            "torqueNmm",
            WindowForms.TORQUE,
            "torque limit set on the motor, N mm; left out by hand",
            InstrumentStep::torqueNmm);
    private static final Field<SetAngles, Double> CUTTING =
            required("cuttingDeg", number(0, 3600, "degrees"), "turn in which the edges cut", SetAngles::cuttingDeg);
    private static final Field<SetAngles, Double> RELEASING =
            required("releasingDeg", number(0, 3600, "degrees"), "turn back", SetAngles::releasingDeg);
    private static final RecordForm<SetAngles> ANGLES_FORM = new RecordForm<>(
            "setAngles",
            "Angles set for reciprocation.",
            true,
            List.of(CUTTING, RELEASING),
            values -> new SetAngles(values.of(CUTTING), values.of(RELEASING)));
    private static final Field<InstrumentStep, Optional<SetAngles>> ANGLES = optional(
            "angles",
            ANGLES_FORM,
            "angles set on the motor for reciprocation; left out, those are taken that instrument and motor allow",
            InstrumentStep::angles);
    private static final Field<InstrumentStep, Integer> STROKES =
            required("strokes", STROKES_FORM, "number of strokes", InstrumentStep::strokes);
    private static final Field<InstrumentStep, String> NOTE =
            standing("note", "", note(), "free text", InstrumentStep::note);

    /** A step as the first version of the form had it: an instrument's, without a word for its kind. */
    static final RecordForm<InstrumentStep> VERSION_1 = new RecordForm<>(
            "step",
            "One step of a sequence.",
            false,
            List.of(INSTRUMENT, DEPTH, MOTION, SPEED, TORQUE, STROKES, NOTE),
            values -> new InstrumentStep(
                    values.of(INSTRUMENT),
                    values.of(DEPTH),
                    values.of(MOTION),
                    values.of(SPEED),
                    values.of(TORQUE),
                    values.of(STROKES),
                    values.of(NOTE)));

    private static final RecordForm<InstrumentStep> WORK = new RecordForm<>(
            "instrumentStep",
            "An instrument that works in the canal.",
            false,
            List.of(INSTRUMENT, DEPTH, MOTION, SPEED, TORQUE, ANGLES, STROKES, NOTE),
            values -> new InstrumentStep(
                    values.of(INSTRUMENT),
                    values.of(DEPTH),
                    values.of(MOTION),
                    values.of(SPEED),
                    values.of(TORQUE),
                    values.of(ANGLES),
                    values.of(STROKES),
                    values.of(NOTE)));

    private static final Field<Irrigation, NeedleGauge> NEEDLE = required(
            "needle",
            word(NeedleGauge.values(), NeedleGauge::word),
            "gauge of the needle, ISO 9626",
            Irrigation::needle);
    private static final Field<Irrigation, Double> NEEDLE_DEPTH = required(
            "depthMm",
            DEPTH_FORM,
            "how far the needle's tip is to go, from the coronal reference point, mm",
            Irrigation::depthMm);
    private static final Field<Irrigation, Double> VOLUME =
            required("volumeMl", number(0, 1000, "ml"), "how much is given, ml", Irrigation::volumeMl);
    private static final Field<Irrigation, String> IRRIGANT =
            required("irrigant", name(), "what is given, named freely", Irrigation::irrigant);
    private static final Field<Irrigation, String> IRRIGATION_NOTE =
            standing("note", "", note(), "free text", Irrigation::note);
    private static final RecordForm<Irrigation> RINSE = new RecordForm<>(
            "irrigation",
            "A rinse through a needle.",
            false,
            List.of(NEEDLE, NEEDLE_DEPTH, VOLUME, IRRIGANT, IRRIGATION_NOTE),
            values -> new Irrigation(
                    values.of(NEEDLE),
                    values.of(NEEDLE_DEPTH),
                    values.of(VOLUME),
                    values.of(IRRIGANT),
                    values.of(IRRIGATION_NOTE)));

    private static final Field<Patency, ThingId> PATENCY_INSTRUMENT =
            required("instrument", thing(), USED, Patency::instrument);
    private static final Field<Patency, Double> BEYOND =
            required("beyondMm", number(0, 10, "mm"), "how far beyond the working length it goes", Patency::beyondMm);
    private static final Field<Patency, String> PATENCY_NOTE = standing("note", "", note(), "free text", Patency::note);
    private static final RecordForm<Patency> OPEN = new RecordForm<>(
            "patency",
            "A small instrument passed a little beyond the working length.",
            false,
            List.of(PATENCY_INSTRUMENT, BEYOND, PATENCY_NOTE),
            values -> new Patency(values.of(PATENCY_INSTRUMENT), values.of(BEYOND), values.of(PATENCY_NOTE)));

    private static final Field<Recapitulation, ThingId> BACK_INSTRUMENT =
            required("instrument", thing(), USED, Recapitulation::instrument);
    private static final Field<Recapitulation, Integer> BACK_STROKES =
            required("strokes", STROKES_FORM, "number of strokes", Recapitulation::strokes);
    private static final Field<Recapitulation, String> BACK_NOTE =
            standing("note", "", note(), "free text", Recapitulation::note);
    private static final RecordForm<Recapitulation> BACK = new RecordForm<>(
            "recapitulation",
            "An instrument brought back to the working length.",
            false,
            List.of(BACK_INSTRUMENT, BACK_STROKES, BACK_NOTE),
            values -> new Recapitulation(values.of(BACK_INSTRUMENT), values.of(BACK_STROKES), values.of(BACK_NOTE)));

    static final Form<Step> FORM = new KindForm<>(List.of(
            new KindForm.Kind<>("instrument", InstrumentStep.class, WORK),
            new KindForm.Kind<>("irrigation", Irrigation.class, RINSE),
            new KindForm.Kind<>("patency", Patency.class, OPEN),
            new KindForm.Kind<>("recapitulation", Recapitulation.class, BACK)));

    private StepForms() {}
}
