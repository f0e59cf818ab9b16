package org.taperwright.sequencer.outcome;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.shaping.passage.spread.BandedQuantity;
import org.taperwright.shaping.passage.spread.ShapingBands;

/**
 * A main number of the outcome with what it is that is not known of it.
 *
 * @param label the number in words; of what is told of every step, that of the step where it came out worst
 * @param banded the number, its band and correlations
 */
public record Unknown(String label, BandedQuantity banded) {
    private static final List<String> OF_STEPS =
            List.of("torqueNmm", "torsionalReserve", "lifeSpent", "roomFilled", "greatestStrain", "tipForceN");
    private static final String LESS_IS_WORSE = "torsionalReserve";
    /** Follows what transportation follows, so that one of the two is enough. */
    private static final String CENTRING = "centringRatio";

    private static final double NOTHING = 1e-9;

    /** The main numbers: of the steps first, then of the whole canal. */
    public static List<Unknown> of(Shaped shaped, ShapingBands bands) {
        List<Unknown> found = new ArrayList<>();
        for (String name : OF_STEPS) {
            worst(bands, name).ifPresent(banded -> found.add(ofStep(shaped, banded)));
        }
        bands.quantities().stream()
                .filter(banded -> banded.quantity().step().isEmpty())
                .filter(banded -> !banded.quantity().name().startsWith(CENTRING))
                .forEach(banded -> found.add(
                        new Unknown(ShownQuantity.of(banded.quantity()).label(), banded)));
        return found;
    }

    private static Unknown ofStep(Shaped shaped, BandedQuantity banded) {
        int place = shaped.places().get(banded.quantity().step().orElseThrow());
        return new Unknown(
                "Step " + (place + 1) + ": "
                        + ShownQuantity.of(banded.quantity()).label(),
                banded);
    }

    private static Optional<BandedQuantity> worst(ShapingBands bands, String name) {
        Comparator<BandedQuantity> byValue = Comparator.comparingDouble(BandedQuantity::value);
        return bands.quantities().stream()
                .filter(banded -> banded.quantity().step().isPresent())
                .filter(banded -> banded.quantity().name().equals(name))
                .filter(banded -> Math.abs(banded.value()) > NOTHING)
                .max(name.equals(LESS_IS_WORSE) ? byValue.reversed() : byValue);
    }

    /** The line of a table: number, standing, value, band, the unknown it follows most closely, how closely. */
    public List<String> line() {
        ShownQuantity shown = ShownQuantity.of(banded.quantity());
        return List.of(
                label,
                banded.quantity().standing().word(),
                shown.written(banded.value()),
                banded.band()
                        .map(band -> OutcomeCell.written(
                                new Band(band.low() * shown.factor(), band.high() * shown.factor())))
                        .orElse("–"),
                banded.strongest().map(found -> found.input().label()).orElse("none stands out"),
                banded.strongest()
                        .map(found -> String.format(Locale.ROOT, "%.2f", found.rank()))
                        .orElse("–"));
    }
}
