package org.taperwright.shaping.kit;

import java.util.HashMap;
import java.util.Map;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.passage.spread.BandedQuantity;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.shaping.passage.stroke.Mesh;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.passage.stroke.SequenceShaping;
import org.taperwright.shaping.passage.stroke.ShapingConstants;
import org.taperwright.shaping.passage.stroke.StrokePlan;
import org.taperwright.shaping.sequence.ArrangedSequence;

/**
 * What share of its fatigue life each instrument of a sequence spends in one canal: the shares of all steps that use it,
 * added (Palmgren 1924, Miner 1945), with the band over the uncertain constants of {@link ShapingBands}. An index of the
 * sequence's own canal: the canal that was shaped may have been straighter or more curved.
 */
public final class UseEstimates {
    private static final String LIFE_SPENT = "lifeSpent";

    private UseEstimates() {}

    /** By instrument; one whose steps could not be made, or whose band is not known, is left out. */
    public static Map<ThingId, LifeSpent> of(ArrangedSequence arranged, Progress progress) {
        PreparedSequence prepared = PreparedSequence.of(arranged);
        ShapingBands bands = ShapingBands.of(
                prepared,
                SequenceShaping.of(
                        prepared, arranged.canal(), ShapingConstants.USUAL, StrokePlan.USUAL, Mesh.FINE, progress),
                progress);
        Map<ThingId, LifeSpent> spent = new HashMap<>();
        byStep(bands)
                .forEach((place, share) ->
                        spent.merge(arranged.step(place).uses().orElseThrow(), share, LifeSpent::plus));
        return spent;
    }

    /** By step, counted from 0; one that could not be made, or whose band is not known, is left out. */
    public static Map<Integer, LifeSpent> byStep(ShapingBands bands) {
        Map<Integer, LifeSpent> spent = new HashMap<>();
        for (BandedQuantity quantity : bands.quantities()) {
            if (quantity.quantity().name().equals(LIFE_SPENT)) {
                quantity.band()
                        .ifPresent(band ->
                                spent.put(quantity.quantity().step().orElseThrow(), share(quantity.value(), band)));
            }
        }
        return spent;
    }

    private static LifeSpent share(double value, Band band) {
        double central = kept(value);
        return new LifeSpent(Math.min(central, kept(band.low())), central, Math.max(central, kept(band.high())));
    }

    private static double kept(double share) {
        return Math.max(0, Math.min(LifeSpent.MOST, share));
    }
}
