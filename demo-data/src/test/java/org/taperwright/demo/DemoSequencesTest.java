package org.taperwright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.passage.GeometricPassage;
import org.taperwright.shaping.passage.GeometricPassages;
import org.taperwright.shaping.sequence.Sequence;

class DemoSequencesTest {
    private final DemoThings things = DemoThings.read();

    @Test
    void everyCanalIsSound() {
        assertThat(things.all(Canal.class))
                .allSatisfy(canal -> assertThat(CanalGeometry.check(canal)).isEmpty());
    }

    @Test
    void theRotarySequenceHasNoRemarkAndItsWideningStepsWork() {
        GeometricPassage passage = passage("rotary-moderate");
        assertThat(passage.remarks()).isEmpty();
        assertThat(passage.steps())
                .filteredOn(step -> !step.engaged().isEmpty())
                .hasSize(4);
    }

    @Test
    void theExerciseWithMistakesLeftInIsRemarked() {
        assertThat(passage("hand-wide").remarks())
                .extracting(Fault::where)
                .containsExactly("steps[0]", "steps[1].instrument", "steps[6]", "steps[6]");
    }

    private GeometricPassage passage(String id) {
        return GeometricPassages.of(things.arranged(things.thing(id, Sequence.class)));
    }
}
