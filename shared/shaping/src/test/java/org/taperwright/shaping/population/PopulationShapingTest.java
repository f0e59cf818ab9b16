package org.taperwright.shaping.population;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.preset.CanalPresets;
import org.taperwright.shaping.canal.preset.PresetDraw;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Sequences;

class PopulationShapingTest {
    private static final PreparedSequence SEQUENCE = PreparedSequence.of(
            Given.arranged(Given.tube(0.3), 22, List.of(Given.rotary(20, 0.02), Given.rotary(25, 0.02))));

    @Test
    void outcomesAreDistributedAndTheWorstIsBeyondThem() {
        List<Canal> canals =
                PresetDraw.population(CanalPresets.find("lower-molar-mb").orElseThrow(), 24, 7);
        PopulationShaping found = PopulationShaping.of(SEQUENCE, canals, Progress.NONE);
        assertThat(found.canals()).isEqualTo(24);
        assertThat(found.distributions()).isNotEmpty().allSatisfy(distribution -> {
            assertThat(distribution.low()).isLessThanOrEqualTo(distribution.median());
            assertThat(distribution.median()).isLessThanOrEqualTo(distribution.high());
        });
        assertThat(found.worst()).isNotEmpty().allSatisfy(worst -> {
            assertThat(canals).contains(worst.canal());
            assertThat(worst.shaped().canal()).isPresent();
        });
        WorstCase torque = found.worst().stream()
                .filter(worst -> worst.quantity().name().equals("torqueNmm"))
                .findFirst()
                .orElseThrow();
        assertThat(found.distributions().stream()
                        .filter(d -> d.quantity().name().equals("torqueNmm"))
                        .mapToDouble(Distribution::high))
                .allMatch(high -> high <= torque.value() + 1e-12);
    }

    /** Straight tubes that differ in width: a step that fits in every one does nothing in any. */
    @Test
    void whatFitsEverywhereRemovesNothingAnywhere() {
        PreparedSequence fits =
                PreparedSequence.of(Given.arranged(Given.tube(0.9), 22, List.of(Given.blunt(20, 0.02))));
        PopulationShaping found = PopulationShaping.of(fits, List.of(Given.tube(0.8), Given.tube(1.0)), Progress.NONE);
        assertThat(found.notMade()).isEmpty();
        assertThat(found.distributions().stream()
                        .filter(d -> d.quantity().name().equals("removedMm3"))
                        .mapToDouble(Distribution::high))
                .allSatisfy(high -> assertThat(high).isEqualTo(0, within(1e-9)));
    }

    @Test
    void aRinseIsNoStepThatCouldNotBeMade() {
        ArrangedSequence work = Given.arranged(Given.tube(0.9), 22, List.of(Given.blunt(20, 0.02)));
        Sequence rinsed = Sequences.inserted(work.sequence(), 0, new Irrigation(NeedleGauge.G30, 20, 1, "saline", ""));
        PreparedSequence prepared = PreparedSequence.of(new ArrangedSequence(
                rinsed,
                work.canal(),
                work.motor(),
                List.of(Optional.empty(), work.instruments().get(0))));
        assertThat(PopulationShaping.of(prepared, List.of(Given.tube(0.8)), Progress.NONE)
                        .notMade())
                .isEmpty();
    }

    @Test
    void aStepThatCannotEnterIsCountedByCanal() {
        PreparedSequence wide = PreparedSequence.of(Given.arranged(Given.tube(0.9), 22, List.of(Given.hand(60, 0.02))));
        PopulationShaping found =
                PopulationShaping.of(wide, List.of(Given.tube(0.15), Given.tube(0.9), Given.tube(0.2)), Progress.NONE);
        assertThat(found.notMade()).containsExactlyEntriesOf(Map.of(0, 2));
    }
}
