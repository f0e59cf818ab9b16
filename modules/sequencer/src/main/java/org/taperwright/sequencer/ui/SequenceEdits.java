package org.taperwright.sequencer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Sequences;
import org.taperwright.shaping.sequence.SetAngles;
import org.taperwright.shaping.sequence.Step;

/**
 * The edits of a sequence. Each is a pure function from what stands to what shall stand, with the name that undo shows;
 * an edit that would change nothing is absent. Steps are named by their number from 1.
 */
final class SequenceEdits {
    /** A named edit: what the sequence becomes. */
    record Edit(String name, Sequence after) {}

    private SequenceEdits() {}

    /**
     * Adds steps before the place given: each instrument to the working length, as its maker allows.
     *
     * @param place index the first new step will have
     * @param ids instruments; those not in the library are left out
     */
    static Optional<Edit> add(Sequence sequence, int place, List<ThingId> ids, Snapshot snapshot) {
        Sequence after = sequence;
        int at = Math.max(0, Math.min(sequence.steps().size(), place));
        List<String> names = new ArrayList<>();
        for (ThingId id : ids) {
            Optional<Instrument> instrument = snapshot.thing(id, Instrument.class);
            if (instrument.isPresent()) {
                Step step = step(sequence, id, instrument.get(), snapshot);
                after = Sequences.inserted(after, at + names.size(), step);
                names.add(instrument.get().name());
            }
        }
        if (names.isEmpty()) {
            return Optional.empty();
        }
        String name = names.size() == 1
                ? "Add step " + (at + 1) + ", " + names.get(0)
                : "Add steps " + (at + 1) + " to " + (at + names.size());
        return Optional.of(new Edit(name, after));
    }

    /** Takes a step out. */
    static Optional<Edit> remove(Sequence sequence, int step) {
        if (!has(sequence, step)) {
            return Optional.empty();
        }
        return Optional.of(new Edit("Remove step " + (step + 1), Sequences.removed(sequence, step)));
    }

    /** Moves a step so that it stands at another index. */
    static Optional<Edit> move(Sequence sequence, int from, int to) {
        if (!has(sequence, from) || !has(sequence, to) || from == to) {
            return Optional.empty();
        }
        return Optional.of(
                new Edit("Move step " + (from + 1) + " to place " + (to + 1), Sequences.moved(sequence, from, to)));
    }

    /** Puts a step's tip at a depth, mm from the coronal reference point. */
    static Optional<Edit> depth(Sequence sequence, int step, double depthMm) {
        return change(sequence, step, "depth", Shown.mm(depthMm), old -> old.at(depthMm));
    }

    /** Moves a step's instrument another way. */
    static Optional<Edit> motion(Sequence sequence, int step, Motion motion) {
        return work(sequence, step, "motion", motion.word(), old -> old.withMotion(motion));
    }

    /** Sets the motor's speed for a step, rpm; absent for a step by hand. */
    static Optional<Edit> speed(Sequence sequence, int step, Optional<Double> rpm) {
        String value = rpm.map(Shown::rpm).orElse("not set");
        return work(sequence, step, "speed", value, old -> old.withSpeed(rpm));
    }

    /** Sets the motor's torque limit for a step, N mm; absent for a step by hand. */
    static Optional<Edit> torque(Sequence sequence, int step, Optional<Double> torqueNmm) {
        String value = torqueNmm.map(Shown::torque).orElse("not set");
        return work(sequence, step, "torque limit", value, old -> old.withTorque(torqueNmm));
    }

    /** Sets the angles of reciprocation for a step; absent where they are left to instrument and motor. */
    static Optional<Edit> angles(Sequence sequence, int step, Optional<SetAngles> angles) {
        String value = angles.map(set -> Shown.degrees(set.cuttingDeg()) + " and " + Shown.degrees(set.releasingDeg()))
                .orElse("not set");
        return work(sequence, step, "angles", value, old -> old.withAngles(angles));
    }

    /** Sets the number of strokes of a step. */
    static Optional<Edit> strokes(Sequence sequence, int step, int strokes) {
        return change(sequence, step, "strokes", Integer.toString(strokes), old -> {
            if (old instanceof InstrumentStep work) {
                return work.withStrokes(strokes);
            }
            return old instanceof Recapitulation back
                    ? new Recapitulation(back.instrument(), strokes, back.note())
                    : old;
        });
    }

    /** Puts another step of a kind in the place of one. */
    static Optional<Edit> replace(Sequence sequence, int step, String field, String value, Step other) {
        return change(sequence, step, field, value, old -> other);
    }

    /** Adds a step of any kind before the place given. */
    static Optional<Edit> insert(Sequence sequence, int place, Step step) {
        int at = Math.max(0, Math.min(sequence.steps().size(), place));
        return Optional.of(
                new Edit("Add step " + (at + 1) + ", " + step.word(), Sequences.inserted(sequence, at, step)));
    }

    /** Tries the sequence in another canal. */
    static Optional<Edit> canal(Sequence sequence, ThingId id, Snapshot snapshot) {
        String name = snapshot.thing(id, Canal.class).map(Canal::name).orElse(id.value());
        return unlessSame(
                sequence,
                new Edit(
                        "Canal " + name,
                        new Sequence(
                                sequence.name(),
                                Optional.of(id),
                                sequence.motor(),
                                sequence.steps(),
                                sequence.note())));
    }

    /** Drives the sequence by another motor, or by none. */
    static Optional<Edit> motor(Sequence sequence, Optional<ThingId> id, Snapshot snapshot) {
        String name = id.flatMap(motor -> snapshot.thing(motor, Motor.class))
                .map(motor -> "Motor " + motor.name())
                .orElse("No motor");
        return unlessSame(
                sequence,
                new Edit(name, new Sequence(sequence.name(), sequence.canal(), id, sequence.steps(), sequence.note())));
    }

    /** Renames the sequence. */
    static Optional<Edit> rename(Sequence sequence, String name) {
        String trimmed = name.strip();
        if (trimmed.isEmpty()) {
            return Optional.empty();
        }
        return unlessSame(
                sequence,
                new Edit(
                        "Rename sequence to " + trimmed,
                        new Sequence(trimmed, sequence.canal(), sequence.motor(), sequence.steps(), sequence.note())));
    }

    private static Step step(Sequence sequence, ThingId id, Instrument instrument, Snapshot snapshot) {
        double depth = sequence.canal()
                .flatMap(canal -> snapshot.thing(canal, Canal.class))
                .map(Canal::workingLengthMm)
                .orElse(instrument.design().lengthMm());
        boolean powered = instrument.drive() == Drive.POWERED;
        return new InstrumentStep(
                id,
                depth,
                instrument.design().motion(),
                powered ? instrument.speedRpm().map(SequenceEdits::middle) : Optional.empty(),
                powered ? instrument.torqueNmm().map(Window::most) : Optional.empty(),
                1,
                "");
    }

    private static double middle(Window window) {
        return (window.least() + window.most()) / 2;
    }

    private static boolean has(Sequence sequence, int step) {
        return step >= 0 && step < sequence.steps().size();
    }

    private interface StepChange {
        Step of(Step old);
    }

    private static Optional<Edit> change(Sequence sequence, int step, String field, String value, StepChange change) {
        if (!has(sequence, step)) {
            return Optional.empty();
        }
        Step changed = change.of(sequence.steps().get(step));
        return unlessSame(
                sequence,
                new Edit(
                        ("Step " + (step + 1) + " " + field + " " + value).strip(),
                        Sequences.withStep(sequence, step, changed)));
    }

    private static Optional<Edit> work(
            Sequence sequence, int step, String field, String value, UnaryOperator<InstrumentStep> change) {
        return change(
                sequence,
                step,
                field,
                value,
                old -> old instanceof InstrumentStep instrumental ? change.apply(instrumental) : old);
    }

    private static Optional<Edit> unlessSame(Sequence sequence, Edit edit) {
        return edit.after().equals(sequence) ? Optional.empty() : Optional.of(edit);
    }
}
