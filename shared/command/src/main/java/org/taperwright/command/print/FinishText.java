package org.taperwright.command.print;

import java.util.Locale;
import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.finish.ConeFit;
import org.taperwright.shaping.finish.Finish;
import org.taperwright.shaping.finish.Fit;
import org.taperwright.shaping.finish.NeedleReach;
import org.taperwright.shaping.finish.StiffNeedle.Assumed;

/** What a shaped canal lets in, as parts of a page. */
final class FinishText {
    private FinishText() {}

    static void parts(Page page, Finish finish, Banded banded) {
        page.part("Cleaning: how deep needles go below the orifice (gauges of ISO 9626 at their widest, from memory)");
        page.line("Volume to the depth of the last step, " + Shown.mm(finish.endMm()) + ": "
                + Shown.number(finish.beforeMm3(), 2, 2) + " mm³ before, " + Shown.number(finish.afterMm3(), 2, 2)
                + " mm³ after (computed, from the wear assumed)");
        Assumed least = Assumed.LEAST;
        Assumed most = Assumed.MOST;
        page.line("Steel: index; assumed, no source, are a push of at most " + Shown.number(Assumed.USUAL.forceN())
                + " ("
                + Shown.number(least.forceN()) + " to " + Shown.number(most.forceN()) + ") N, a strain of at most "
                + Assumed.USUAL.strain() + " (" + least.strain() + " to " + most.strain() + ") and a friction of "
                + Assumed.USUAL.friction() + " (" + most.friction() + " to " + least.friction() + ")");
        Table needles = Table.of(
                Column.words("gauge"),
                Column.numbers("outside", "mm"),
                Column.numbers("flexible", "mm"),
                Column.numbers("room beside", "mm"),
                Column.numbers("steel", "mm"),
                Column.words("steel stopped by"));
        for (NeedleReach reach : finish.needles()) {
            needles.row(
                    reach.gauge().word(),
                    Shown.number(reach.gauge().outerMm(), 3, 3),
                    Shown.number(reach.flexibleMm(), 2, 2),
                    Shown.number(reach.besideMm(), 3, 3),
                    steel(reach, banded),
                    banded.shown() ? reach.stop().word() : Banded.NONE);
        }
        page.table(needles);
        page.part("Filling: for each taper the widest cone that as named stops at most " + Shown.number(Finish.THERE_MM)
                + " mm short of the depth of the last step (computed; tolerances of ISO 6877, from memory)");
        if (finish.cones().isEmpty()) {
            page.line("No cone of size 15 or more comes near the depth of the last step.");
            return;
        }
        Table cones = Table.of(
                Column.words("cone"),
                Column.numbers("end gap", "mm"),
                Column.numbers("room at the tip", "mm"),
                Column.numbers("filled", "%"),
                Column.numbers("tolerance", "mm"),
                Column.numbers("at its widest stops at", "mm"),
                Column.numbers("held at", "mm"),
                Column.numbers("at its thinnest room at the tip", "mm"));
        for (ConeFit fit : finish.cones()) {
            Fit wide = fit.wide();
            cones.row(
                    fit.cone().size() + "/"
                            + String.format(Locale.ROOT, "%.2f", fit.cone().taper())
                                    .substring(1),
                    Shown.number(Math.max(0, fit.endGapMm()), 2, 2),
                    Shown.number(fit.nominal().gapMm(), 3, 3),
                    Shown.number(fit.shareFilled() * 100, 0, 0),
                    "±" + Shown.number(fit.cone().toleranceMm(), 2, 2),
                    Shown.number(wide.depthMm(), 2, 2),
                    wide.binds() ? Shown.number(wide.bindDepthMm(), 2, 2) : "–",
                    Shown.number(fit.thin().gapMm(), 3, 3));
        }
        page.table(cones);
    }

    /** How deep a steel needle goes, with its band. */
    static String steel(NeedleReach reach, Banded banded) {
        return banded.shown() ? Banded.cell(reach.stiffMm(), reach.stiffBand(), 1, 1) : Banded.NONE;
    }
}
