package org.taperwright.shaping.placement;

import java.util.Optional;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.placement.rod.Rod;

/**
 * Whether an instrument can be brought to a depth at all, and how deep it goes before it first binds. Where it cuts, a canal
 * narrower than it is no hindrance; where it does not (a shaft, a tip without edges), nothing makes room for it.
 */
public final class Entry {
    /** What a part that does not cut may be wider than the canal, mm of diameter: one size of the series (assumed, no source). */
    private static final double GIVES_MM = 0.05;

    private static final double GRID_MM = 0.05;
    /** The tip's cone is a fraction of a millimetre long. */
    private static final double FINE_MM = 0.02;

    private static final double TOUCH_MM = 1e-6;

    private Entry() {}

    /** Why an instrument cannot reach a depth; where is "depthMm". */
    public static Optional<Fault> fault(Rod rod, Lumen lumen, WallSupport support, double tipDepthMm) {
        double[] width = widths(lumen, support);
        int steps = (int) Math.ceil(tipDepthMm / FINE_MM);
        int section = 0;
        for (int i = 0; i <= steps; i++) {
            double level = Math.min(tipDepthMm, i * FINE_MM);
            double depth = tipDepthMm - level;
            section = rod.section(level, section);
            double wide = 2 * rod.wallRadiusMm(level, section);
            double room = at(width, depth / lumen.spacingMm());
            if (!rod.cuts(level) && wide > room + GIVES_MM) {
                return Optional.of(Fault.impossible(
                        "depthMm",
                        "at " + Shown.mm(level) + " from its tip the instrument is " + Shown.diameter(wide)
                                + " wide and does not cut; the canal, " + Shown.mm(depth) + " below the orifice, is "
                                + Shown.diameter(room),
                        "expected a narrower instrument, a wider canal or a depth of less than "
                                + Shown.mm(tipDepthMm)));
            }
        }
        return Optional.empty();
    }

    /**
     * Deepest place of the tip, on a grid of 0.05 mm, to which it and every place before it the instrument's circle is within the
     * smallest width of every section that it passes, mm; 0 where it binds at once.
     *
     * @param deepestMm where to stop looking
     */
    public static double bindDepthMm(Rod rod, Lumen lumen, WallSupport support, double deepestMm) {
        double[] width = widths(lumen, support);
        double end = Math.min(deepestMm, lumen.depthMm(lumen.stations() - 1));
        int steps = (int) Math.floor(end / GRID_MM + 1e-9);
        for (int i = 0; i <= steps; i++) {
            if (!passes(rod, lumen, width, i * GRID_MM)) {
                return Math.max(0, (i - 1) * GRID_MM);
            }
        }
        return steps * GRID_MM;
    }

    private static double at(double[] values, double place) {
        int below = Math.max(0, Math.min((int) place, values.length - 2));
        double share = Math.max(0, Math.min(1, place - below));
        return values[below] + share * (values[below + 1] - values[below]);
    }

    private static double[] widths(Lumen lumen, WallSupport support) {
        double[] width = new double[lumen.stations()];
        for (int j = 0; j < width.length; j++) {
            width[j] = support.leastWidthMm(j);
        }
        return width;
    }

    private static boolean passes(Rod rod, Lumen lumen, double[] width, double tipDepthMm) {
        int section = 0;
        int deepest = Math.min(width.length - 1, (int) ((tipDepthMm + 1e-9) / lumen.spacingMm()));
        for (int j = deepest; j >= 0; j--) {
            double level = Math.max(0, tipDepthMm - lumen.depthMm(j));
            section = rod.section(level, section);
            if (rod.wallRadiusMm(level, section) > width[j] / 2 + TOUCH_MM) {
                return false;
            }
        }
        return true;
    }
}
