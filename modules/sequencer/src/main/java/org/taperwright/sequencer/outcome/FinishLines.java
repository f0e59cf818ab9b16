package org.taperwright.sequencer.outcome;

import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.finish.ConeFit;
import org.taperwright.shaping.finish.Finish;
import org.taperwright.shaping.finish.Fit;
import org.taperwright.shaping.finish.NeedleReach;

/** What a shaped canal lets in, as lines of tables; depths are from the orifice. */
public final class FinishLines {
    /** Headings of the needles. */
    public static final List<String> NEEDLE_HEADINGS = List.of(
            "Gauge",
            "Outside (mm)",
            "Flexible reaches (mm, computed)",
            "Short of the end (mm, computed)",
            "Steel reaches (mm, index)",
            "Steel is stopped by");
    /** Headings of the cones. */
    public static final List<String> CONE_HEADINGS = List.of(
            "Cone",
            "Gap at the end (mm, computed)",
            "Binds at (mm, computed)",
            "Filled (%, computed)",
            "Tolerance (mm)",
            "Widest stops at (mm, computed)",
            "Thinnest, room at tip (mm, computed)");

    private static final String NONE = "–";

    private FinishLines() {}

    /** The needles, the widest first. */
    public static List<List<String>> needles(Finish finish) {
        return finish.needles().stream()
                .map(reach -> needle(reach, finish.endMm()))
                .toList();
    }

    private static List<String> needle(NeedleReach reach, double end) {
        return List.of(
                reach.gauge().word(),
                Shown.number(reach.gauge().outerMm(), 3, 3),
                Shown.number(reach.flexibleMm(), 2, 2),
                Shown.number(Math.max(0, end - reach.flexibleMm()), 2, 2),
                Shown.number(reach.stiffMm(), 1, 1) + " ("
                        + Shown.number(reach.stiffBand().low(), 1, 1) + " to "
                        + Shown.number(reach.stiffBand().high(), 1, 1) + ")",
                reach.stop().word());
    }

    /** For each taper the widest cone that comes near the end. */
    public static List<List<String>> cones(Finish finish) {
        return finish.cones().stream().map(FinishLines::cone).toList();
    }

    private static List<String> cone(ConeFit fit) {
        Fit nominal = fit.nominal();
        return List.of(
                Shown.designation(fit.cone().size(), fit.cone().taper()),
                Shown.number(Math.max(0, fit.endGapMm()), 2, 2),
                nominal.binds() ? Shown.number(nominal.bindDepthMm(), 2, 2) : NONE,
                Shown.number(fit.shareFilled() * 100, 0, 0),
                "±" + Shown.number(fit.cone().toleranceMm(), 2, 2),
                Shown.number(fit.wide().depthMm(), 2, 2),
                Shown.number(fit.thin().gapMm(), 3, 3));
    }
}
