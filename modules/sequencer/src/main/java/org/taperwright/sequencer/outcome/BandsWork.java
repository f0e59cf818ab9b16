package org.taperwright.sequencer.outcome;

import org.taperwright.library.store.Arrangement;
import org.taperwright.mechanics.work.BoundedCache;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.workbench.api.Work;

/**
 * The bands of a sequence that has been shaped: 200 times anew over what is not known.
 *
 * @param shaped the sequence, which has been run
 * @param kept bands of arrangements that were looked at before
 */
public record BandsWork(Shaped shaped, BoundedCache<Arrangement, ShapingBands> kept) implements Work<ShapingBands> {
    @Override
    public ShapingBands run(Progress progress) {
        return kept.get(shaped.arrangement(), arrangement -> bands(shaped.run().orElseThrow(), progress));
    }

    private static ShapingBands bands(Shaped.Run run, Progress progress) {
        return ShapingBands.of(
                run.prepared(),
                run.sequence(),
                StepNumbers.asked(run.prepared().instruments().size()),
                progress);
    }
}
