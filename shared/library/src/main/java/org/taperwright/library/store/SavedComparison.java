package org.taperwright.library.store;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.comparison.score.Weights;
import org.taperwright.mechanics.design.ThingId;

/**
 * A comparison as kept.
 *
 * @param name what people call it
 * @param designs two to six designs by identifier, in the user's order
 * @param datum which of them ratios are taken against
 * @param weights the user's weights for a score; none where there is no score
 * @param rows which metrics are pinned above the others and which are hidden
 * @param kept the results it was kept with, if any
 * @param measured what was measured of its designs on a bench
 * @param note free text
 */
public record SavedComparison(
        String name,
        List<ThingId> designs,
        ThingId datum,
        Weights weights,
        MetricRows rows,
        Optional<KeptResults> kept,
        List<MeasuredOn> measured,
        String note) {
    public SavedComparison {
        designs = List.copyOf(designs);
        measured = List.copyOf(measured);
    }

    /** One without weights, choice of rows, kept results or measurements. */
    public SavedComparison(String name, List<ThingId> designs, ThingId datum, String note) {
        this(name, designs, datum, Weights.NONE, MetricRows.ALL, Optional.empty(), List.of(), note);
    }

    /** The same under another name. */
    public SavedComparison named(String other) {
        return new SavedComparison(other, designs, datum, weights, rows, kept, measured, note);
    }

    /** The same of other designs against another datum. */
    public SavedComparison of(List<ThingId> otherDesigns, ThingId otherDatum) {
        return new SavedComparison(name, otherDesigns, otherDatum, weights, rows, kept, measured, note);
    }

    /** The same with other weights. */
    public SavedComparison weighed(Weights other) {
        return new SavedComparison(name, designs, datum, other, rows, kept, measured, note);
    }

    /** The same with another choice of rows. */
    public SavedComparison showing(MetricRows other) {
        return new SavedComparison(name, designs, datum, weights, other, kept, measured, note);
    }

    /** The same with other measurements. */
    public SavedComparison measuring(List<MeasuredOn> others) {
        return new SavedComparison(name, designs, datum, weights, rows, kept, others, note);
    }

    /** The same with results kept. */
    public SavedComparison keeping(KeptResults results) {
        return new SavedComparison(name, designs, datum, weights, rows, Optional.of(results), measured, note);
    }
}
