package org.taperwright.sequencer.outcome;

import java.util.Optional;
import org.taperwright.library.store.Arrangement;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.canal.preset.CanalPreset;
import org.taperwright.shaping.canal.preset.PresetDraw;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.population.PopulationShaping;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.workbench.api.Work;

/**
 * Runs an arrangement's steps over canals drawn from a preset, each step as far from the end as in its own canal.
 *
 * @param arrangement the steps
 * @param preset what the canals are drawn from
 * @param canals how many
 */
public record PopulationWork(Arrangement arrangement, CanalPreset preset, int canals)
        implements Work<PopulationWork.Found> {
    /**
     * The result with its input.
     *
     * @param input what was run
     * @param population what came of it; empty where there is no step or no canal to measure depths in
     */
    public record Found(PopulationWork input, Optional<PopulationShaping> population) {}

    @Override
    public Found run(Progress progress) {
        Optional<ArrangedSequence> arranged = arrangement
                .arranged()
                .filter(found -> CanalGeometry.possible(found.canal()))
                .filter(found -> !found.instruments().isEmpty());
        return new Found(
                this,
                arranged.map(found -> PopulationShaping.of(
                        PreparedSequence.of(found),
                        PresetDraw.population(preset, canals, LatinHypercube.SEED),
                        progress)));
    }
}
