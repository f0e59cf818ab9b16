package org.taperwright.sequencer.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.Arrangement;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.sequencer.SampleSequence;
import org.taperwright.shaping.sequence.Sequence;

class PassageWorkTest {
    private final Snapshot snapshot = SequenceEditsTest.snapshot();
    private final Sequence sequence =
            snapshot.thing(SampleSequence.SEQUENCE, Sequence.class).orElseThrow();

    @Test
    void a_step_is_wider_where_its_diameter_exceeds_the_canals() {
        PassageWork.Passed passed = new PassageWork(Arrangement.of(sequence, snapshot)).run(Progress.NONE);

        // by hand: tip 11.5 mm below the orifice, narrow diameter 0.6 - 0.0375 s, instrument 0.25 + 0.06 (11.5 - s):
        // at the orifice 0.94 - 0.60 mm on top of an earlier 20/.04 of 0.66 mm; the greatest excess is over the narrow
        // side
        assertThat(passed.steps()).hasSize(3).allMatch(Optional::isPresent);
        assertThat(passed.steps().get(2).orElseThrow().greatestExcessMm())
                .isCloseTo((0.25 + 0.06 * 11.5) - (0.20 + 0.04 * 11.5), within(1e-9));
    }

    @Test
    void a_step_whose_instrument_is_gone_is_remarked_and_the_others_keep_their_numbers() {
        Map<ThingId, Entry> entries = new HashMap<>(snapshot.entries());
        entries.remove(SampleSequence.HAND);
        Sequence fast = SequenceEdits.speed(sequence, 2, Optional.of(5000.0))
                .orElseThrow()
                .after();

        PassageWork.Passed passed = new PassageWork(Arrangement.of(fast, new Snapshot(2, entries))).run(Progress.NONE);

        assertThat(passed.steps().get(0)).isEmpty();
        assertThat(passed.steps().get(1)).isPresent();
        assertThat(passed.remarks()).extracting(Fault::where).contains("steps[0].instrument", "steps[2].speedRpm");
    }

    @Test
    void without_a_canal_nothing_is_computed() {
        Sequence nowhere = new Sequence("Nowhere", Optional.empty(), Optional.empty(), sequence.steps(), "");

        PassageWork.Passed passed = new PassageWork(Arrangement.of(nowhere, snapshot)).run(Progress.NONE);

        assertThat(passed.steps()).isEqualTo(List.of(Optional.empty(), Optional.empty(), Optional.empty()));
    }

    @Test
    void remarks_name_their_step_as_the_window_counts() {
        assertThat(PassageWork.place("steps[2].speedRpm")).isEqualTo("Step 3, speed");
        assertThat(PassageWork.place("steps[0]")).isEqualTo("Step 1");
        assertThat(PassageWork.place("canal.openings[1]")).isEqualTo("Canal.openings[1]");
        assertThat(PassageWork.step(Fault.unusual("steps[4].depthMm", "", ""))).contains(4);
        assertThat(PassageWork.step(Fault.unusual("motor", "", ""))).isEmpty();
    }
}
