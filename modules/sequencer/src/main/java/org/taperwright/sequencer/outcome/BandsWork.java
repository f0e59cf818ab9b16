package org.taperwright.sequencer.outcome;

import org.taperwright.library.store.Arrangement;
import org.taperwright.mechanics.work.BoundedCache;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.workbench.api.Work;

/**
 * The bands of a sequence that has been shaped, by shaping it many times anew over what is not known.
 *
 * @param shaped the sequence, which has been run
 * @param samples how many times
 * @param kept bands by all samples of arrangements that were looked at before
 */
public record BandsWork(Shaped shaped, int samples, BoundedCache<Key, ShapingBands> kept)
        implements Work<ShapingBands> {
    /**
     * What bands are kept under.
     *
     * @param arrangement the input
     * @param samples how many samples
     */
    public record Key(Arrangement arrangement, int samples) {}

    @Override
    public ShapingBands run(Progress progress) {
        return kept.get(
                new Key(shaped.arrangement(), samples),
                key -> bands(shaped.run().orElseThrow(), progress));
    }

    private ShapingBands bands(Shaped.Run run, Progress progress) {
        return ShapingBands.of(
                run.prepared(),
                run.sequence(),
                StepNumbers.asked(run.prepared().instruments().size()),
                samples,
                progress);
    }
}
