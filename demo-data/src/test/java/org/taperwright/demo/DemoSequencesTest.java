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
                .filteredOn(step ->
                        step.filter(geometry -> !geometry.engaged().isEmpty()).isPresent())
                .hasSize(4);
    }

    @Test
    void theExerciseWithMistakesLeftInIsRemarked() {
        assertThat(passage("hand-wide").remarks())
                .extracting(Fault::where)
                .containsExactly(
                        "steps[0]",
                        "steps[2].instrument",
                        "steps[2]",
                        "steps[2]",
                        "steps[2]",
                        "steps[4].depthMm",
                        "steps[11]",
                        "steps[11]");
    }

    private GeometricPassage passage(String id) {
        return GeometricPassages.of(things.arranged(things.thing(id, Sequence.class)));
    }
}
