package org.taperwright.command.print;

import java.util.Optional;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.passage.spread.ShapingBands;

/**
 * Estimates and indices with their bands: a point value of these is never shown without one, so that where no bands were worked out
 * none are shown.
 *
 * @param bands the bands, where they were worked out
 */
record Banded(Optional<ShapingBands> bands) {
    static final String NONE = "–";
    static final String LEFT_OUT =
            "Estimates and indices are left out with --computed-only: they are not shown without their bands.";

    /** Whether estimates and indices are shown. */
    boolean shown() {
        return bands.isPresent();
    }

    /** A number of a step, or of the whole, such as {@code 0.46 (0.20 to 1.10)}. */
    String cell(Optional<Integer> step, String name, double value, double factor, int decimals) {
        return bands.flatMap(found -> found.band(step, name))
                .map(band -> cell(value, band, factor, decimals))
                .orElse(NONE);
    }

    /** A number with its band. */
    static String cell(double value, Band band, double factor, int decimals) {
        return Shown.number(value * factor, decimals, decimals) + " ("
                + Shown.number(band.low() * factor, decimals, decimals) + " to "
                + Shown.number(band.high() * factor, decimals, decimals) + ")";
    }

    /** The same for programs, {@code "name": { "value": …, "low": …, "high": … }}; nothing where there is no band. */
    void write(JsonWriter out, Optional<Integer> step, String name, String as, double value) {
        bands.flatMap(found -> found.band(step, name)).ifPresent(band -> write(out, as, value, band));
    }

    /** A number with its band for programs. */
    static void write(JsonWriter out, String as, double value, Band band) {
        out.name(as).beginObject(true);
        out.name("value").number(value);
        out.name("low").number(band.low());
        out.name("high").number(band.high());
        out.endObject();
    }
}
