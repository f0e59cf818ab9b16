package org.taperwright.sequencer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.sequencer.SampleSequence;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.SetAngles;

class SequenceEditsTest {
    private final Snapshot snapshot = snapshot();
    private final Sequence sequence =
            snapshot.thing(SampleSequence.SEQUENCE, Sequence.class).orElseThrow();

    @Test
    void a_new_step_goes_to_the_working_length_at_the_makers_speed_and_torque() {
        SequenceEdits.Edit edit = SequenceEdits.add(sequence, 1, List.of(SampleSequence.EXTRA), snapshot)
                .orElseThrow();

        assertThat(edit.name()).isEqualTo("Add step 2, Fen rotary 30");
        InstrumentStep added = (InstrumentStep) edit.after().steps().get(1);
        assertThat(added.depthMm()).isEqualTo(17.5);
        assertThat(added.motion()).isEqualTo(Motion.ROTATION);
        assertThat(added.speedRpm()).contains(300.0);
        assertThat(added.torqueNmm()).contains(25.0);
        assertThat(edit.after().steps()).hasSize(4);
    }

    @Test
    void a_hand_instrument_is_given_no_speed_or_torque() {
        InstrumentStep added = (InstrumentStep) SequenceEdits.add(sequence, 0, List.of(SampleSequence.HAND), snapshot)
                .orElseThrow()
                .after()
                .steps()
                .get(0);

        assertThat(added.speedRpm()).isEmpty();
        assertThat(added.torqueNmm()).isEmpty();
    }

    @Test
    void several_instruments_keep_their_order_and_things_that_are_none_are_left_out() {
        SequenceEdits.Edit edit = SequenceEdits.add(
                        sequence, 9, List.of(SampleSequence.EXTRA, SampleSequence.CANAL, SampleSequence.HAND), snapshot)
                .orElseThrow();

        assertThat(edit.name()).isEqualTo("Add steps 4 to 5");
        assertThat(edit.after().steps().subList(3, 5))
                .extracting(step -> step.uses().orElseThrow())
                .containsExactly(SampleSequence.EXTRA, SampleSequence.HAND);
        assertThat(SequenceEdits.add(sequence, 0, List.of(SampleSequence.MOTOR), snapshot))
                .isEmpty();
    }

    @Test
    void every_field_of_a_step_is_named_with_its_value() {
        assertThat(SequenceEdits.depth(sequence, 2, 16.5).orElseThrow().name()).isEqualTo("Step 3 depth 16.5 mm");
        assertThat(SequenceEdits.motion(sequence, 1, Motion.RECIPROCATION)
                        .orElseThrow()
                        .name())
                .isEqualTo("Step 2 motion reciprocation");
        assertThat(SequenceEdits.speed(sequence, 1, Optional.of(350.0))
                        .orElseThrow()
                        .name())
                .isEqualTo("Step 2 speed 350 rpm");
        assertThat(SequenceEdits.torque(sequence, 1, Optional.of(15.0))
                        .orElseThrow()
                        .name())
                .isEqualTo("Step 2 torque limit 1.5 N·cm");
        assertThat(SequenceEdits.speed(sequence, 1, Optional.empty())
                        .orElseThrow()
                        .name())
                .isEqualTo("Step 2 speed not set");
        SequenceEdits.Edit angles = SequenceEdits.angles(sequence, 1, Optional.of(new SetAngles(170, 50)))
                .orElseThrow();
        assertThat(angles.name()).isEqualTo("Step 2 angles 170° and 50°");
        assertThat(SequenceEdits.angles(angles.after(), 1, Optional.empty())
                        .orElseThrow()
                        .name())
                .isEqualTo("Step 2 angles not set");
        assertThat(SequenceEdits.strokes(sequence, 0, 5)
                        .orElseThrow()
                        .after()
                        .steps()
                        .get(0))
                .isInstanceOfSatisfying(
                        InstrumentStep.class, step -> assertThat(step.strokes()).isEqualTo(5));
    }

    @Test
    void what_would_change_nothing_or_is_no_step_is_no_edit() {
        assertThat(SequenceEdits.depth(sequence, 0, 17.5)).isEmpty();
        assertThat(SequenceEdits.depth(sequence, 3, 10)).isEmpty();
        assertThat(SequenceEdits.move(sequence, 0, 3)).isEmpty();
        assertThat(SequenceEdits.remove(sequence, -1)).isEmpty();
        assertThat(SequenceEdits.canal(sequence, SampleSequence.CANAL, snapshot))
                .isEmpty();
        assertThat(SequenceEdits.rename(sequence, " ")).isEmpty();
    }

    @Test
    void the_motor_can_be_taken_away() {
        SequenceEdits.Edit edit =
                SequenceEdits.motor(sequence, Optional.empty(), snapshot).orElseThrow();

        assertThat(edit.name()).isEqualTo("No motor");
        assertThat(edit.after().motor()).isEmpty();
    }

    static Snapshot snapshot() {
        Map<ThingId, Entry> entries = new HashMap<>();
        SampleSequence.things().forEach((id, thing) -> entries.put(id, new Entry(id, thing, 1, Instant.EPOCH, "")));
        return new Snapshot(1, entries);
    }
}
